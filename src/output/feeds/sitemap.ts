import type { Kit } from "../../core/kit/kit.ts";
import { element } from "../xml.ts";

/** The folders of guide and glossary, below the site. */
const GUIDE = "guide/";
const GLOSSARY = "glossary/";

/**
 * The site map (sitemaps.org protocol 0.9): the catalogue, each kit's page with the day of its current version where it
 * states one, each class's page, the guide and the glossary. `url` is the site's folder; `classes` and `guide` are
 * names of folders and of the guide's pages.
 */
export function sitemap(
  url: string,
  kits: readonly Pick<Kit, "slug" | "versions">[],
  classes: readonly string[] = [],
  guide: readonly string[] = [],
): string {
  const dates = kits.flatMap(({ versions }) => versions[0]?.date ?? []).sort();
  const pages = [
    { path: "", date: dates.at(-1) },
    ...kits.map(({ slug, versions }) => ({ path: `kits/${slug}/`, date: versions[0]?.date })),
    ...classes.map((slug) => ({ path: `classes/${slug}/`, date: undefined })),
    ...(guide.length === 0 ? [] : ["", ...guide.map((name) => `${name}/`)]).map((path) => ({
      path: GUIDE + path,
      date: undefined,
    })),
    { path: GLOSSARY, date: undefined },
  ];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...pages.map(({ path, date }) => {
      const lastmod = date === undefined ? "" : element("lastmod", date);
      return `  <url>${element("loc", url + path)}${lastmod}</url>`;
    }),
    "</urlset>\n",
  ].join("\n");
}
