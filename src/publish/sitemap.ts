import type { Kit } from "../kit/kit.ts";
import { element } from "./xml.ts";

/**
 * The site map (sitemaps.org protocol 0.9): the catalogue and each kit's page, with the day of the kit's current version
 * where it states one. `url` is the site's folder.
 */
export function sitemap(url: string, kits: readonly Kit[]): string {
  const dates = kits.flatMap(({ versions }) => versions[0]?.date ?? []).sort();
  const pages = [
    { path: "", date: dates.at(-1) },
    ...kits.map(({ slug, versions }) => ({ path: `kits/${slug}/`, date: versions[0]?.date })),
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
