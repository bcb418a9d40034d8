import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { PictureError, readSvg } from "../../../src/input/svg/read-svg.ts";
import { fc } from "../../seed.ts";

const DRAWINGS = new URL("../../fixtures/drawings/", import.meta.url);

const WHOLE = readdirSync(DRAWINGS)
  .sort()
  .map((file) => readFileSync(new URL(file, DRAWINGS), "utf8"));

/** Pieces that drawings hold, put where they do not belong. */
const PIECES = [
  '<g clip-path="url(#clip0_101_2)">',
  "</g>",
  '<use href="#Layer_1"/>',
  '<use xlink:href="#path92"/>',
  '<svg viewBox="0 0 1e9 1e-9">',
  "<switch>",
  '<mask id="m"><use href="#svg5"/></mask>',
  '<rect width="1e300" height="1e300" stroke="red" stroke-width="1e300"/>',
  '<path d="M0 0L1e-300 0" stroke="red" stroke-dasharray="0 1e-9"/>',
  ' transform="matrix(0 0 0 0 0 0)"',
  ' stroke="url(#linearGradient844) red"',
  ' stroke-width="1e-12"',
  ' clip-path="url(#SVGID_2_)"',
  ' mask="url(#mask0_101_2)"',
  ' clipPathUnits="objectBoundingBox"',
  "&ns_svg;",
  "<style>:root>*{stroke:red;stroke-dasharray:1 2 3;clip-path:url(#clipPath51)}</style>",
  "<text x='1'>moon</text>",
  "NaN",
  "-",
  "<!--",
  "]]>",
];

/** A drawing with pieces put in, taken out and repeated. */
const mutated: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...WHOLE),
    fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 1, noNaN: true }),
        drop: fc.nat({ max: 60 }),
        put: fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 4 })),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  )
  .map(([whole, edits]) =>
    edits.reduce((text, { at, drop, put }) => {
      const from = Math.floor(at * text.length);
      return text.slice(0, from) + put + text.slice(from + drop);
    }, whole),
  );

/** Pieces that leave a drawing well-formed, by where they belong. */
const WELL_FORMED = {
  behind: PIECES.filter((piece) => /^<.*(?:\/>|<\/\w+>)$/.test(piece)),
  within: PIECES.filter((piece) => piece.startsWith(" ")),
};

/** A drawing with whole elements put behind tags, and attributes into them. */
const grafted: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...WHOLE),
    fc.array(
      fc.tuple(
        fc.nat(),
        fc.oneof(
          fc.constantFrom(...WELL_FORMED.behind).map((put) => ({ put, tag: /(?<=<\/?\w[^>]*>)/g })),
          fc
            .constantFrom(...WELL_FORMED.within)
            .map((put) => ({ put, tag: /(?<=<(?:rect|path|g|use|circle)\b)(?=[^>]*>)/g })),
        ),
      ),
      { minLength: 1, maxLength: 5 },
    ),
  )
  .map(([whole, grafts]) =>
    grafts.reduce((text, [which, { put, tag }]) => {
      const places = [...text.matchAll(tag)].map(({ index }) => index);
      const at = places[which % places.length]!;
      return text.slice(0, at) + put + text.slice(at);
    }, whole),
  );

/** A drawing with a whole attribute or tag changed, so that it stays well-formed more often. */
const rewritten: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...WHOLE),
    fc.nat(),
    fc.constantFrom("0", "-1", "none", "1e9", "url(#x)", "50%", "inherit", "", "a b"),
  )
  .map(([whole, which, value]) => {
    const places = [...whole.matchAll(/ [\w:-]+="[^"]*"/g)];
    const { index, 0: attribute } = places[which % places.length]!;
    const name = attribute.slice(0, attribute.indexOf("="));
    return `${whole.slice(0, index)}${name}="${value}"${whole.slice(index + attribute.length)}`;
  });

describe("readSvg(text) of a drawing that something was done to", () => {
  it.each([
    ["pieces", mutated, 120],
    ["elements and attributes", grafted, 120],
    ["values", rewritten, 80],
  ] as const)("reads it, or tells of it and of nothing else: %s", (what, drawings, numRuns) => {
    const outcomes = new Set<string>();
    fc.assert(
      fc.property(drawings, (text) => {
        try {
          const { shapes, width, height } = readSvg(text);
          expect(width > 0 && height > 0).toBe(true);
          for (const { rings, alpha } of shapes) {
            expect(alpha).toBeGreaterThan(0);
            for (const ring of rings)
              for (const point of ring) if (!point.every(Number.isFinite)) throw new Error("no number");
          }
          outcomes.add("read");
        } catch (error) {
          if (!(error instanceof PictureError)) throw error;
          expect(error.faults.every(({ line, message }) => line >= 1 && message !== "")).toBe(true);
          outcomes.add("told");
        }
      }),
      { numRuns },
    );
    if (what !== "pieces") expect(outcomes).toEqual(new Set(["read", "told"]));
  });
});
