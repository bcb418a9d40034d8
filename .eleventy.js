import { registerSite } from "./src/build/eleventy/register.ts";

/** Settings only; what is registered lives in src/build/eleventy. */
export default function (eleventyConfig) {
  // TypeScript cannot be followed by Eleventy's own reader of imports; src is watched as a folder instead.
  eleventyConfig.setWatchJavaScriptDependencies(false);
  registerSite(eleventyConfig);
  return {
    // Each page is registered by name. The input holds no page: Eleventy never looks into content.
    dir: {
      input: "src/build/eleventy/data",
      data: ".",
      includes: "../../../../layouts",
      layouts: "../../../../layouts",
    },
    templateFormats: ["njk"],
  };
}
