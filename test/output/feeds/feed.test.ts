import { DOMParser, type Element } from "@xmldom/xmldom";
import { parseAtomFeed } from "feedsmith";
import { describe, expect, it } from "vitest";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { feed, hasFeed } from "../../../src/output/feeds/feed.ts";
import { madeClass } from "../../core/class/made-seats.ts";
import { kitWith, SITE, settingsWith, version } from "./made-kits.ts";

const ATOM = "http://www.w3.org/2005/Atom";
const KITS = [
  kitWith("little-gull", {
    title: "Little <Gull> & Co. ]]>",
    versions: [version("1.1", "2026-09-12", "Straighter\u0007 legs & a “beak”."), version("1.0", "2025-10-04")],
    licence: { name: "MIT", url: "https://licences.example.org/mit?a=1&b=2" },
  }),
  kitWith("harbour-moon", { versions: [version("2", "2026-10-03"), version("1", "2025-10-04")] }),
  kitWith("tide-and-lamp", {}),
];
const SETTINGS = settingsWith({ author: { name: "Quay workshop", url: "https://quay.example.org/" } });
const fed = (kits = KITS, classes: readonly KitClass[] = []) => ({ kits, classes });
const TEXT = feed(SETTINGS, fed());

/** Reads it as XML by a parser that the program does not write with; a fault is an error. */
function read(text: string): Element {
  const document = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(text, "text/xml");
  return document.documentElement!;
}

const children = (parent: Element, name: string): Element[] =>
  [...parent.childNodes].filter(
    (node): node is Element =>
      node.nodeType === 1 && node.localName === name && (node as Element).namespaceURI === ATOM,
  );

describe("feed(settings, kits)", () => {
  const root = read(TEXT);
  const entries = children(root, "entry");

  it("has each version that kits state, newest first, and none of a kit that states none", () => {
    expect(entries.map((entry) => children(entry, "id")[0]!.textContent)).toEqual([
      `${SITE}kits/harbour-moon/#version-2`,
      `${SITE}kits/little-gull/#version-1.1`,
      `${SITE}kits/little-gull/#version-1.0`,
      `${SITE}kits/harbour-moon/#version-1`,
    ]);
  });

  // RFC 4287, 4.1.1: one id, one title, one updated; at most one generator, icon, rights, subtitle; authors unless every entry has one; SHOULD one self.
  it("has the elements that a feed must have", () => {
    for (const name of ["id", "title", "updated", "generator", "icon", "subtitle"])
      expect(children(root, name), name).toHaveLength(1);
    expect(children(root, "author")).toHaveLength(1);
    const self = children(root, "link").filter((link) => link.getAttribute("rel") === "self");
    expect(self.map((link) => link.getAttribute("href"))).toEqual([`${SITE}feed.xml`]);
  });

  // 4.1.2: one id, title and updated in each entry, at most one published, rights and summary; an alternate link where there is no content.
  it("has the elements that an entry must have", () => {
    for (const entry of entries) {
      for (const name of ["id", "title", "updated"]) expect(children(entry, name), name).toHaveLength(1);
      for (const name of ["published", "rights", "summary"])
        expect(children(entry, name).length, name).toBeLessThanOrEqual(1);
      const alternates = children(entry, "link").filter((link) => link.getAttribute("rel") === "alternate");
      // 4.1.1: no two alternate links of one type and language.
      expect(alternates).toHaveLength(1);
    }
  });

  // 4.2.6: an id is an absolute IRI, and no two entries share one. 3.2.2: a person's uri is an IRI.
  it("has ids of their own that are addresses", () => {
    const ids = [root, ...entries].map((one) => children(one, "id")[0]!.textContent!);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(new URL(id).protocol).toBe("https:");
  });

  // 3.3: dates are date-times of RFC 3339, with an upper-case T and Z.
  it("has the stated days as dates, and the newest as its own", () => {
    const dates = [root, ...entries].flatMap((one) => [...children(one, "updated"), ...children(one, "published")]);
    for (const date of dates) expect(date.textContent).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
    expect(children(root, "updated")[0]!.textContent).toBe("2026-10-03T00:00:00Z");
  });

  // 2: the document element, its namespace and language.
  it("is an Atom document in the site's language", () => {
    expect([root.localName, root.namespaceURI, root.getAttribute("xml:lang")]).toEqual(["feed", ATOM, "en"]);
  });

  it("is read by another program as it was meant, markup and all", () => {
    const { title, authors, entries: read } = parseAtomFeed(TEXT);
    const textOf = (value: unknown) => (typeof value === "string" ? value : (value as { value: string }).value);
    expect(textOf(title)).toBe("Folds & more");
    expect(authors).toEqual([{ name: "Quay workshop", uri: "https://quay.example.org/" }]);
    const gull = read![1]!;
    expect(textOf(gull.title)).toBe("Little <Gull> & Co. ]]>, version 1.1");
    // A control character that XML cannot hold is left out.
    expect(textOf(gull.summary)).toBe("Straighter legs & a “beak”. One line.");
    expect(gull.links).toContainEqual({ rel: "license", href: "https://licences.example.org/mit?a=1&b=2" });
  });

  it("keeps its ids when the site moves and says what they were made from", () => {
    const idsOf = (text: string) => [...text.matchAll(/<id>(.*?)<\/id>/g)].map((match) => match[1]);
    const moved = feed({ ...settingsWith({ feedId: SITE }), url: "https://elsewhere.example.org/" }, fed());
    expect(idsOf(moved)).toEqual(idsOf(TEXT));
    expect(moved).toContain('href="https://elsewhere.example.org/kits/little-gull/"');
  });

  it("has classes to come that say when they were announced, by that day, and tells nothing of their seats", () => {
    const stated = { title: "Two evenings", announced: "2026-09-30", summary: "By the window." };
    const classes = [
      madeClass({ slug: "two-evenings", ...stated }),
      madeClass({ slug: "silent" }),
      madeClass({ slug: "past", announced: "2026-09-29", state: "held" }),
    ];
    const { entries: found } = parseAtomFeed(feed(SETTINGS, fed(KITS, classes)));
    expect(found!.map(({ id }) => id!.replace(SITE, ""))).toEqual([
      "kits/harbour-moon/#version-2",
      "classes/two-evenings/",
      "kits/little-gull/#version-1.1",
      "kits/little-gull/#version-1.0",
      "kits/harbour-moon/#version-1",
    ]);
    const [, entry] = found!;
    expect(JSON.stringify(entry)).toContain("A class on 4 February 2027, Reading room. By the window.");
    expect(entry!.updated).toBe("2026-09-30T00:00:00Z");
    expect(hasFeed(SETTINGS, fed([], classes.slice(0, 1)))).toBe(true);
    expect(hasFeed(SETTINGS, fed([], classes.slice(1)))).toBe(false);
  });

  it("names the site where no author is stated", () => {
    expect(feed(settingsWith(), fed())).toContain("<author><name>Folds &amp; more</name></author>");
  });
});

describe("hasFeed(settings, kits)", () => {
  it("needs an address and a version", () => {
    expect(hasFeed(SETTINGS, fed())).toBe(true);
    expect(hasFeed(SETTINGS, fed([kitWith("tide-and-lamp", {})]))).toBe(false);
    expect(hasFeed({ ...SETTINGS, url: undefined }, fed())).toBe(false);
  });
});
