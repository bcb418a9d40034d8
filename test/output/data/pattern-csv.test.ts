import { describe, expect, it } from "vitest";
import { patternCsv } from "../../../src/output/data/pattern-csv.ts";
import { published } from "../../core/pattern/published.ts";
import { KITS } from "../../core/plan/made.ts";
import { parseCsv } from "./rfc4180.ts";

const HEADER = [
  "leaf",
  "pattern page",
  "book page",
  "leaf name",
  "spans (mm)",
  "cuts (mm)",
  "tacks (mm)",
  "notch (mm)",
];

/** A list such as `0-46.5:2 46.5-66.5:1` as objects with these keys. */
function list<K extends string>(text: string, pattern: RegExp, ...keys: K[]): Record<K, number>[] {
  return text === ""
    ? []
    : text.split(" ").map((item) => {
        const found = pattern.exec(item)!;
        return Object.fromEntries(keys.map((key, i) => [key, Number(found[i + 1])])) as Record<K, number>;
      });
}

describe("patternCsv(pattern)", () => {
  it.each(KITS)("%s: read back by RFC 4180, it is what pattern.json says", (_, folder) => {
    const [header, ...rows] = parseCsv(patternCsv(folder.pattern));
    expect(header!.slice(0, HEADER.length)).toEqual(HEADER);
    const number = (text: string) => (text === "" ? null : Number(text));
    const read = rows.map(([leaf, patternPage, bookPage, , spans, cuts, tacks, notch]) => ({
      leaf: number(leaf!),
      patternPage: number(patternPage!),
      bookPage: number(bookPage!),
      spans: list(spans!, /^([\d.]+)-([\d.]+):(\d)$/, "from", "to", "level"),
      cuts: list(cuts!, /^([\d.]+):([\d.]+)$/, "at", "depth"),
      tacks: list(tacks!, /^([\d.]+)-([\d.]+)$/, "from", "to"),
      notch: list(notch!, /^([\d.]+)-([\d.]+):([\d.]+)$/, "from", "to", "depth"),
    }));
    const { leaves, light } = published(folder);
    expect(read).toEqual(
      leaves.map(({ leaf, patternPage, bookPage, spans, cuts, tacks }) => ({
        leaf,
        patternPage,
        bookPage,
        spans,
        cuts,
        tacks,
        notch: (light?.notches ?? [])
          .filter((one) => one.leaf === leaf)
          .map(({ from, to, depth }) => ({ from, to, depth })),
      })),
    );
    expect(rows.every((row) => row.length === header!.length)).toBe(true);
  });

  it.each(KITS)("%s: names the leaves that have no page number, and only those", (_, folder) => {
    const [, ...rows] = parseCsv(patternCsv(folder.pattern));
    for (const [, , bookPage, name] of rows) {
      if (bookPage === "") expect(name).toMatch(/^(plate|front leaf|end leaf) \d+ of \d+/);
      else expect(name).toBe("");
    }
  });
});

describe("parseCsv(text)", () => {
  // RFC 4180, section 2.
  it("reads quotes, doubled quotes, commas and line ends inside fields", () => {
    expect(parseCsv('a,"b,c",""\r\n"d ""e""","f\r\ng",h\r\n,,\r\n')).toEqual([
      ["a", "b,c", ""],
      ['d "e"', "f\r\ng", "h"],
      ["", "", ""],
    ]);
  });

  it("refuses a bare line feed", () => {
    expect(() => parseCsv("a,b\nc,d\n")).toThrow("no CRLF");
  });
});
