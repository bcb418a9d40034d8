import { describe, expect, it } from "vitest";
import type { Changes } from "../../core/light/disc-kit.ts";
import type { PublishedWindow } from "../../core/light/published-window.ts";
import { discPattern } from "../../core/light/read-disc-kit.ts";
import { nearestPaper, reachAt } from "../../core/light/standing.ts";

const BUD =
  '<path id="rim" d="M10 10H190V190H10Z"/><path id="well" d="M70 30L130 20L185 70L175 120L120 120L140 180L60 180L80 120L20 130L25 60Z"/>';

const KITS: readonly (readonly [name: string, changes: Changes])[] = [
  ["flat spine, ltr", {}],
  ["rounded spine, rtl", { book: { direction: "rtl" }, fit: { spine: "rounded" } }],
  ["flat spine, rtl, stepped", { book: { direction: "rtl" }, fit: { foldStyle: "stepped" } }],
  ["rounded spine, ltr, stepped, whole millimetres", { fit: { spine: "rounded", foldStyle: "stepped", markStep: 1 } }],
  ["borders of 2 and 48 leaves", { fit: { borderLeaves: [2, 48] } }],
  [
    "borders of 40 and 5 leaves, rtl, rounded",
    { book: { direction: "rtl" }, fit: { borderLeaves: [40, 5], spine: "rounded" } },
  ],
  ["fewer picture leaves, so that leaves stay unfolded", { fit: { pictureLeaves: 130, borderLeaves: [6, 0] } }],
  ["a wide light far forward", { light: { diameter: 70, height: 30, clearance: 2, setback: 0 } }],
  ["a thin tall light far back", { light: { diameter: 12, height: 80, clearance: 3, setback: 50 } }],
  ["no clearance", { light: { clearance: 0 } }],
  ["the light in the rim beside the well", { light: { in: "rim", diameter: 14, height: 20 } }],
  [
    "the light before the background",
    {
      shapes: '<circle id="rim" cx="40" cy="60" r="30"/><circle id="well" cx="60" cy="60" r="20"/>',
      light: { in: "wall", diameter: 50, height: 60 },
    },
  ],
  ["an irregular well", { shapes: BUD }],
  [
    "an irregular well, rtl, thirty-seconds of an inch",
    { shapes: BUD, book: { direction: "rtl" }, fit: { markStep: "1/32 in" } },
  ],
  ["a given floor", { light: { floor: 120.5 } }],
  ["lost leaves", { fit: { lostLeaves: [90, 91, 110] } }],
  [
    "a narrow opening",
    {
      fit: { height: 60, head: 80, opening: 25, pictureLeaves: "solve" },
      light: { diameter: 16, height: 20, setback: 30 },
    },
  ],
];

/** The published numbers have three decimals of a millimetre. */
const PUBLISHED = 0.002;

/** Middles of short stretches over the heights that the light fills, its clearance above included. */
function heightsOf(pattern: PublishedWindow): number[] {
  const { floor, height, clearance } = pattern.light;
  const pieces = 180;
  return Array.from({ length: pieces }, (_, i) => floor - ((height + clearance) * (i + 0.5)) / pieces);
}

// Source: definition of the pocket. The light is an upright cylinder, grown all round and above by its clearance; a leaf is the
// straight line from its root to its fold, less its notch. Sampled along radius and height.
describe.each(KITS)("notches of a kit with %s", (_, changes) => {
  const pattern = discPattern(changes);
  const { light, book } = pattern;
  const free = light.diameter / 2 + light.clearance;
  const lost = new Set(pattern.lostLeaves);
  const leaves = Array.from({ length: book.leaves }, (_, i) => i + 1).filter((leaf) => !lost.has(leaf));
  const notchOf = new Map(light.notches.map((notch) => [notch.leaf, notch]));

  it("leave no paper inside the light's clearance", () => {
    for (const leaf of leaves) {
      const notch = notchOf.get(leaf);
      const reaches = heightsOf(pattern).map((height) => {
        const reach = reachAt(pattern, leaf, height);
        const cut = notch && height > notch.from && height < notch.to;
        return cut ? Math.min(reach, book.leafWidth - notch.depth) : reach;
      });
      for (const reach of new Set(reaches))
        expect(nearestPaper(pattern, leaf, reach, light.centre), `leaf ${leaf}`).toBeGreaterThan(free - PUBLISHED);
    }
  });

  it("are as shallow as the mark step allows", () => {
    for (const notch of light.notches) {
      const proudest = Math.max(...heightsOf(pattern).map((height) => reachAt(pattern, notch.leaf, height)));
      const less = Math.min(proudest, book.leafWidth - (notch.depth - pattern.fit.markStep));
      expect(nearestPaper(pattern, notch.leaf, less, light.centre), `leaf ${notch.leaf}`).toBeLessThan(
        free + PUBLISHED,
      );
      const steps = notch.depth / pattern.fit.markStep;
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-4);
    }
  });

  it("reach from the floor to the clearance above the light, and leave paper at the gutter", () => {
    expect(light.notches.length).toBeGreaterThan(5);
    for (const notch of light.notches) {
      expect(notch.to).toBeCloseTo(light.floor, 4);
      expect(notch.from).toBeCloseTo(light.floor - light.height - light.clearance, 4);
      expect(notch.remaining).toBeCloseTo(book.leafWidth - notch.depth, 4);
      expect(notch.remaining).toBeGreaterThanOrEqual(15);
    }
    const numbers = light.notches.map((notch) => notch.leaf);
    expect(numbers).toEqual([...new Set(numbers)].sort((a, b) => a - b));
    expect(numbers.filter((leaf) => lost.has(leaf))).toEqual([]);
  });
});

describe("notches", () => {
  it("of a book read the other way stand on the leaves counted from the other end", () => {
    const plain = discPattern({ fit: { borderLeaves: [20, 20] } });
    const other = discPattern({ fit: { borderLeaves: [20, 20] }, book: { direction: "rtl" } });
    expect(other.light.notches).toEqual(plain.light.notches);
    expect(other.light.centre.x).toBeCloseTo(-plain.light.centre.x, 3);
  });

  it("of a kit in the middle of its book are the same from both ends", () => {
    const { notches } = discPattern().light;
    const mirrored = notches.map((notch) => ({ ...notch, leaf: 205 - notch.leaf })).toReversed();
    expect(mirrored).toEqual(notches);
  });
});
