import { registerSite } from "./src/site/register.ts";

/** Settings only; what is registered lives in src/site. */
export default function (eleventyConfig) {
  registerSite(eleventyConfig);
  return {
    dir: { input: "content", includes: "../layouts", layouts: "../layouts" },
    markdownTemplateEngine: false,
    htmlTemplateEngine: "njk",
    templateFormats: ["md", "njk"],
  };
}
