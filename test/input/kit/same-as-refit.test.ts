import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";
import { FIXTURES } from "./kit-folders.ts";

const folder = mkdtempSync(join(tmpdir(), "leaflight-refit-"));
cpSync(join(FIXTURES, "content"), join(folder, "content"), { recursive: true });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The same figures as front matter, written into the kit's file as an author would. */
const CASES: readonly (readonly [slug: string, refit: Refit, yaml: Readonly<Record<string, unknown>>])[] = [
  [
    "harbour-moon",
    { leaves: 180, blockThickness: 21, lastPage: 352 },
    { "book.leaves": 180, "book.blockThickness": 21, "book.lastPage": 352 },
  ],
  [
    "harbour-moon",
    { leafHeight: 205, leafWidth: 133, head: 30, height: 118 },
    { "book.leafHeight": 205, "book.leafWidth": 133, "fit.head": 30, "fit.height": 118 },
  ],
  [
    "harbour-moon",
    { lightDiameter: 34, lightHeight: 40, foldStyle: "single" },
    { "light.diameter": 34, "light.height": 40, "fit.foldStyle": "single" },
  ],
  [
    "harbour-moon",
    { direction: "rtl", borderLeaves: [8, 15], markStep: 1 },
    { "book.direction": "rtl", "fit.borderLeaves": [8, 15], "fit.markStep": 1 },
  ],
  [
    "evening-boat",
    { leaves: 231, blockThickness: 29.5, lastPage: 440, plates: [{ afterPage: 101, leaves: 3 }] },
    {
      "book.leaves": 231,
      "book.blockThickness": 29.5,
      "book.lastPage": 440,
      "book.plates": [{ afterPage: 101, leaves: 3 }],
    },
  ],
  ["evening-boat", { lostLeaves: [60, 61, 140].map(leafNumber) }, { "fit.lostLeaves": [60, 61, 140] }],
  [
    "little-gull",
    { leaves: 128, blockThickness: 14, lastPage: 250, pageOneLeaf: leafNumber(3), flapBulk: 1.4 },
    { "book.leaves": 128, "book.blockThickness": 14, "book.lastPage": 250, "fit.flapBulk": 1.4 },
  ],
  ["tide-and-lamp", { leafHeight: 209.55, units: "in" }, { "book.leafHeight": "8 1/4 in" }],
];

/** A project's kit as its author states it. */
function statedKit(base: string, slug: string): Kit {
  return readKit(join(base, "content/kits", slug), base, readMotifs(FIXTURES).made).kit;
}

describe("refitKit(kit, refit) and the same figures in the front matter", () => {
  it.each(CASES)("%s %o give the same kit, so the same pattern", (slug, refit, yaml) => {
    const file = join(folder, "content/kits", slug, "index.md");
    const original = readFileSync(join(FIXTURES, "content/kits", slug, "index.md"), "utf8");
    const [, front, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(original)!;
    const document = parseDocument(front!);
    for (const [path, value] of Object.entries(yaml)) document.setIn(path.split("."), value);
    writeFileSync(file, `---\n${document.toString()}---\n${body}`);
    expect(refitKit(statedKit(FIXTURES, slug), refit)).toEqual(statedKit(folder, slug));
  });
});
