import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import { cornerCsv, patternCsv } from "../../../src/output/data/pattern-csv.ts";
import { publishedCorners, publishedText } from "../../core/pattern/published.ts";
import { KITS } from "../../core/plan/made.ts";
import { fixtureFolder, fixtureFrontMatter, readMadeKit } from "../../input/kit/kit-folders.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

const [, RING, BARS] = SILHOUETTES;
const VERSION = { version: "1", date: "2026-01-01", note: undefined };
const PAGE = readFileSync(join(import.meta.dirname, "../../../content/guide/en/pattern-files.md"), "utf8");

/** The page's tables: a section's heading, the heads of the columns, and the cells of each row. */
const TABLES = PAGE.split(/^## /m)
  .slice(1)
  .flatMap((section) => {
    const heading = section.split("\n", 1)[0]!;
    return [...section.matchAll(/(?:^\|.*\n)+/gm)].map(([table]) => {
      const [head, , ...rows] = table
        .trim()
        .split("\n")
        .map((line) =>
          line
            .split("|")
            .slice(1, -1)
            .map((cell) => cell.trim()),
        );
      return { heading, head: head![0]!, rows: rows as string[][] };
    });
  });
const codes = (cell: string) => [...cell.matchAll(/`([^`]+)`/g)].map(([, code]) => code!);
const rowsOf = (head: string) => TABLES.filter((table) => table.head === head);

/** Every key that has a line, with all keys that lead to it, lists or not. */
const LINES = rowsOf("key").flatMap(({ heading, rows }) =>
  rows.flatMap(([cell]) =>
    codes(cell!).map((key) => (heading === "Top" ? key : `${heading}.${key}`).replaceAll("[]", "")),
  ),
);

/** The keys of a value of JSON, in the same form; the figures of findings have a table of their own. */
function keysOf(value: unknown, path = ""): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => keysOf(one, path));
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = path === "" ? key : `${path}.${key}`;
    return path === "findings" && key !== "kind" ? [] : [at, ...keysOf(inner, at)];
  });
}

/** A kit with what the others have not: plates, prices, and a leaf that was lost. */
function fullKit() {
  const { light, insert, ...matter } = fixtureFrontMatter("harbour-moon");
  const svg = readFileSync(join(fixtureFolder("harbour-moon"), "moon.svg"), "utf8");
  const full = {
    ...matter,
    picture: { ...matter.picture, file: "picture.svg" },
    book: { ...matter.book, lastPage: 391, plates: [{ afterPage: 192, leaves: 4 }] },
    fit: { ...matter.fit, lostLeaves: [60], foldStyle: "single" },
    prices: { card: 0.35 },
  };
  return [
    readMadeKit(full, svg),
    readMadeKit({ ...full, light, insert: { ...insert, card: "teal" }, fit: matter.fit }, svg),
  ];
}

describe("the guide's page of pattern.json", () => {
  const published = [
    ...[...KITS.map(([, kit]) => kit), ...fullKit()].map(publishedText),
    ...[BARS, RING].map((silhouette) => publishedCorners(cornerKit({ versions: [VERSION] }, silhouette))),
  ].map((text) => JSON.parse(text));
  const keys = new Set(published.flatMap((one) => keysOf(one)));

  it("has each key of published patterns in one line", () => {
    expect([...keys].filter((key) => LINES.filter((line) => line === key).length !== 1).sort()).toEqual([]);
  });

  it("has no line for a key that no pattern has", () => {
    expect(LINES.length).toBeGreaterThan(100);
    expect(LINES.filter((line) => !keys.has(line))).toEqual([]);
  });

  it("says something of each", () => {
    expect(TABLES.flatMap(({ rows }) => rows.filter((cells) => cells.some((cell) => cell === "")))).toEqual([]);
  });
});

/** One of each kind: the compiler holds that none is missing, and none of its figures. */
const DOUBTS: { readonly [K in Doubt["kind"]]: Omit<Extract<Doubt, { kind: K }>, "kind"> } = {
  caliper: { caliper: 0, least: 0, most: 0, leaves: 0 },
  "unnumbered-leaves": { lastPage: 0, unnumbered: 0, leaves: 0 },
  "springs-open": { opening: 0, resting: 0 },
  coarse: { leaves: 0, column: 0 },
  "out-of-shape": { stretch: 0 },
  striped: { leaves: 0, of: 0 },
  "narrow-floor": { level: 0, width: 0, need: 0 },
  "light-wider-than-hole": { diameter: 0, width: 0, height: 0 },
  "level-out-of-reach": { level: 0, missing: 0 },
  "merged-spans": { spans: 0, leaves: 0, leastTab: 0 },
  "left-without-knife": { light: false, window: false },
  "levels-left-out": { levels: [] },
  turns: { leaves: 0, most: 0, every: 0 },
  "unseen-parts": { parts: 0 },
  "steep-creases": { leaves: 0, reach: 0 },
  "off-centre": { unfolded: 0, before: 0, after: 0 },
};

describe("the guide's table of findings", () => {
  const rows = rowsOf("kind").flatMap((table) => table.rows);

  it("has each kind with its figures", () => {
    const told = Object.fromEntries(rows.map(([kind, figures]) => [codes(kind!)[0], codes(figures!).sort()]));
    expect(told).toEqual(
      Object.fromEntries(Object.entries(DOUBTS).map(([kind, one]) => [kind, Object.keys(one).sort()])),
    );
  });
});

describe("the guide's tables of pattern.csv", () => {
  const columns = rowsOf("column").map((table) => table.rows.map(([cell]) => codes(cell!)[0]));

  it("have its columns in their order, of kits that are cut and of those that are folded only", () => {
    const texts = [patternCsv(KITS[0]![1].pattern), cornerCsv(cornerPattern(cornerKit()))];
    expect(columns).toEqual(texts.map((text) => text.split("\r\n")[0]!.split(",")));
  });
});
