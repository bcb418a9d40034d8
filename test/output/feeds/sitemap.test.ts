import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { sitemap } from "../../../src/output/feeds/sitemap.ts";
import { kitWith, SITE, version } from "./made-kits.ts";

const KITS = [
  kitWith("little-gull", { versions: [version("1.1", "2026-09-12"), version("1.0", "2025-10-04")] }),
  kitWith("harbour-moon", { versions: [version("2", "2026-10-03")] }),
  kitWith("tide-and-lamp", {}),
];
const TEXT = sitemap(SITE, KITS);

/** Reads it as XML by a parser that the program does not write with; a fault is an error. */
function entries(text: string): { loc: string; lastmod: string | undefined }[] {
  const root = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(text, "text/xml").documentElement!;
  expect([root.localName, root.namespaceURI]).toEqual(["urlset", "http://www.sitemaps.org/schemas/sitemap/0.9"]);
  return [...root.childNodes]
    .filter((node) => node.nodeType === 1)
    .map((url) => {
      expect(url.localName).toBe("url");
      const children = [...url.childNodes].filter((node) => node.nodeType === 1);
      // sitemaps.org protocol, "XML tag definitions": of these tags only loc is required; all are of the map's namespace.
      for (const child of children) expect(["loc", "lastmod"]).toContain(child.localName);
      const textOf = (name: string) => children.find((child) => child.localName === name)?.textContent ?? undefined;
      return { loc: textOf("loc")!, lastmod: textOf("lastmod") };
    });
}

describe("sitemap(url, kits)", () => {
  it("lists the catalogue, each kit's page and the glossary, with the days that kits state", () => {
    expect(entries(TEXT)).toEqual([
      { loc: SITE, lastmod: "2026-10-03" },
      { loc: `${SITE}kits/little-gull/`, lastmod: "2026-09-12" },
      { loc: `${SITE}kits/harbour-moon/`, lastmod: "2026-10-03" },
      { loc: `${SITE}kits/tide-and-lamp/`, lastmod: undefined },
      { loc: `${SITE}glossary/`, lastmod: undefined },
    ]);
  });

  it("lists the guide's contents and pages before the glossary, where there are any", () => {
    expect(entries(sitemap(SITE, [], ["evening"], ["measure", "keys"])).map(({ loc }) => loc)).toEqual([
      SITE,
      `${SITE}classes/evening/`,
      `${SITE}guide/`,
      `${SITE}guide/measure/`,
      `${SITE}guide/keys/`,
      `${SITE}glossary/`,
    ]);
  });

  it("states no day where no kit does", () => {
    expect(entries(sitemap(SITE, [kitWith("tide-and-lamp", {})])).map((one) => one.lastmod)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  // sitemaps.org protocol: loc is a URL of less than 2048 characters that begins with the protocol, below the folder in
  // which the map stands ("Sitemap file location"); lastmod is a W3C date (YYYY-MM-DD); at most 50,000 URLs and 50 MB in UTF-8.
  it("keeps to the protocol's rules", () => {
    const all = entries(TEXT);
    for (const { loc, lastmod } of all) {
      expect(new URL(loc).href).toBe(loc);
      expect(loc.startsWith(SITE)).toBe(true);
      expect(loc.length).toBeLessThan(2048);
      if (lastmod) expect(lastmod).toMatch(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);
    }
    expect(new Set(all.map((one) => one.loc)).size).toBe(all.length);
    expect(TEXT).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/);
  });

  it("escapes what an address may hold", () => {
    const odd = "https://folds.example.org/o'hara&sons/";
    expect(entries(sitemap(odd, []))[0]!.loc).toBe(odd);
  });
});
