import { describe, expect, it } from "vitest";
import { published } from "../../core/pattern/published.ts";
import { readMadeKit } from "../../input/kit/kit-folders.ts";
import type { Published } from "../compare.ts";
import { cellEdges, readingPositions } from "../fan.ts";

const HEAD = 30;
const STEP = 0.1;

/** A picture whose edge falls evenly from the head at the left to the tail at the right, so that a mark tells what a leaf shows. */
const RAMP =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200"><polygon id="hill" points="0,0 200,200 0,200"/></svg>';

function ramp(lost: readonly number[], direction: "ltr" | "rtl" = "ltr"): Published {
  return published(
    readMadeKit(
      {
        title: "Ramp",
        summary: "A slope.",
        picture: { file: "picture.svg", levels: { hill: ["#hill"] }, crop: "canvas" },
        levels: [
          { name: "hill", depth: 18 },
          { name: "air", depth: 30, background: true },
        ],
        book: { leafHeight: 216, leafWidth: 140, blockThickness: 20, leaves: 160, direction },
        fit: {
          borderLeaves: [10, 10],
          head: HEAD,
          height: 140,
          opening: "solve",
          markStep: STEP,
          leastTab: 0.2,
          foldStyle: "stepped",
          lostLeaves: lost,
        },
      },
      RAMP,
    ),
  );
}

/** The part of the picture's width that each picture leaf shows, from its one mark inside the picture; outermost leaves aside. */
function shown(pattern: Published): Map<number, number> {
  const marked = pattern.leaves.filter((leaf) => leaf.patternPage !== null && leaf.spans.length === 3);
  return new Map(marked.map((leaf) => [leaf.leaf, (leaf.spans[0]!.to - HEAD) / 140]));
}

/** The same by hand: what stood from a lost cell's start to the end is laid out anew from the lost cell's end to the end. */
function expected(pattern: Published, lost: readonly number[], leaf: number): number {
  const { opening } = pattern.fit;
  const fan = { leafWidth: 140, blockThickness: 20, leaves: 160, opening, spine: "flat", direction: "ltr" } as const;
  const tips = readingPositions(fan, 11, 150, 18, "front");
  const edges = cellEdges(tips).map((edge, _, all) => edge - all[0]!);
  const station = tips[leaf - 11]! - tips[0]! + edges[1]! / 2;
  const width = edges.at(-1)!;
  let [start, from] = [0, 0];
  for (const gone of lost.filter((one) => one < leaf)) {
    start += ((edges[gone - 11]! - from) / (width - from)) * (1 - start);
    from = edges[gone - 10]!;
  }
  return start + ((station - from) / (width - from)) * (1 - start);
}

describe("lost leaves", () => {
  const plain = ramp([]);
  const cases: [string, number[]][] = [
    ["one in the middle", [80]],
    ["two neighbours", [60, 61]],
    ["two apart", [40, 101]],
    ["the first picture leaf", [11]],
  ];

  it("show the picture evenly when none is lost", () => {
    for (const [leaf, fraction] of shown(plain))
      expect(Math.abs(fraction - expected(plain, [], leaf))).toBeLessThan(0.001);
    expect(shown(plain).size).toBeGreaterThan(135);
  });

  it.each(cases)("%s: the leaves after close over it, by the same rule worked out by hand", (_, lost) => {
    const pattern = ramp(lost);
    const parts = shown(pattern);
    expect(parts.size).toBeGreaterThan(130);
    for (const [leaf, fraction] of parts) {
      expect(Math.abs(fraction - expected(pattern, lost, leaf))).toBeLessThanOrEqual(STEP / 2 / 140 + 1e-4);
    }
    expect(parts.get(149)).toBeGreaterThan(0.985);
  });

  it.each(cases)("%s: leaves before it are as they were, the lost ones are gone, numbers stay", (_, lost) => {
    const pattern = ramp(lost);
    const others = plain.leaves.filter((leaf) => !lost.includes(leaf.leaf));
    expect(pattern.leaves.map(({ leaf, patternPage, bookPage }) => [leaf, patternPage, bookPage])).toEqual(
      others.map(({ leaf, patternPage, bookPage }) => [leaf, patternPage, bookPage]),
    );
    const earlier = (from: Published) =>
      from.leaves.filter((leaf) => leaf.leaf < lost[0]!).map(({ spans, cuts, x }) => ({ spans, cuts, x }));
    expect(earlier(pattern)).toEqual(earlier(plain));
    // Fewer flaps let the book close a little further, and another leaf may be the outermost; all else of the fit stays.
    const same = { restingOpening: 0, holdWidth: 0 };
    expect({ ...pattern.fit, ...same }).toEqual({ ...plain.fit, ...same });
    expect((pattern as unknown as { lostLeaves: number[] }).lostLeaves).toEqual(lost);
  });

  it("shows no part twice and leaves none out", () => {
    const parts = [...shown(ramp([60, 61, 100])).values()];
    const steps = parts.slice(1).map((part, i) => part - parts[i]!);
    // A leaf stands for 1/140 of the picture; the tips lie closest at the sides, and later ones stand for more each time.
    expect(Math.min(...steps)).toBeGreaterThan(0);
    expect(Math.max(...steps)).toBeLessThan(2 / 140);
  });

  it("closes from the right in a book read from right to left", () => {
    // The mirrored ramp read from leaf 11 on: a book from right to left shows the picture's right side first.
    const parts = shown(ramp([80], "rtl"));
    const mirror = ramp([80]);
    for (const [leaf, fraction] of parts) {
      expect(Math.abs(1 - fraction - expected(mirror, [80], leaf))).toBeLessThanOrEqual(STEP / 2 / 140 + 1e-4);
    }
  });

  it("holds the flap before a lost leaf against the next leaf that is there", () => {
    const pattern = ramp([80, 81]);
    const [before, after] = [79, 82].map((n) => pattern.leaves.find((leaf) => leaf.leaf === n)!);
    // Depth 30 behind depth 18 leaves 12 of 18 mm free: more than half.
    const free = after!.spans.filter((span) => span.level === 2);
    const own = before!.spans.filter((span) => span.level === 1);
    const loose = own.flatMap((span) =>
      free
        .map((other) => ({ from: Math.max(span.from, other.from), to: Math.min(span.to, other.to) }))
        .filter((part) => part.to > part.from),
    );
    expect(loose.length).toBeGreaterThan(0);
    expect(before!.tacks).toEqual(loose);
  });
});
