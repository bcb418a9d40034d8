import { registerSite } from "./src/build/eleventy/register.ts";

/** Settings only; what is registered lives in src/build/eleventy. */
export default function (eleventyConfig) {
  // TypeScript cannot be followed by Eleventy's own reader of imports; src is watched as a folder instead.
  eleventyConfig.setWatchJavaScriptDependencies(false);
  registerSite(eleventyConfig);
  return {
    dir: { input: "content", includes: "../layouts", layouts: "../layouts" },
    markdownTemplateEngine: false,
    htmlTemplateEngine: "njk",
    templateFormats: ["md", "njk"],
  };
}
