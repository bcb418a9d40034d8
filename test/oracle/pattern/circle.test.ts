import { describe, expect, it } from "vitest";
import { published } from "../../core/pattern/published.ts";
import { fixtureFrontMatter, readMadeKit } from "../../input/kit/kit-folders.ts";

const BOOK = fixtureFrontMatter("harbour-moon").book;

/** Two discs about the middle of a square picture; `near` is painted last and stands proudest. */
function discKit(book: object, fit: object) {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200"><circle id="middle" cx="100" cy="100" r="80"/><circle id="near" cx="100" cy="100" r="50"/></svg>';
  return published(
    readMadeKit(
      {
        title: "Discs",
        summary: "Two discs.",
        picture: { file: "picture.svg", levels: { near: ["#near"], middle: ["#middle"] }, crop: "canvas" },
        levels: [
          { name: "near", depth: 15 },
          { name: "middle", depth: 25 },
          { name: "far", depth: 45, background: true },
        ],
        book: { ...BOOK, ...book },
        fit: { borderLeaves: [12, 12], head: 40, height: 130, opening: "solve", leastTab: 0, ...fit },
      },
      svg,
    ),
  );
}

// Source: closed form. The half chord of a disc of radius r at distance x from its middle is √(r² − x²). The picture's
// middle is seen at the middle between the outer edges of the first and the last cell.
describe("spans of discs", () => {
  const variants: [string, object, object][] = [
    ["flat, ltr", {}, {}],
    ["rounded, rtl, whole millimetres", { direction: "rtl" }, { spine: "rounded", markStep: 1 }],
    ["unequal borders, thirty-seconds of an inch", {}, { borderLeaves: [5, 40], markStep: "1/32 in" }],
  ];

  it.each(variants)("end at the chords' ends to half a step, %s", (_, book, fit) => {
    const pattern = discKit(book, fit);
    const picture = pattern.leaves.filter((leaf) => leaf.patternPage !== null);
    const front = picture.map((leaf) => leaf.x[0]!);
    const n = front.length;
    const edges = [front[0]! - (front[1]! - front[0]!) / 2, front[n - 1]! + (front[n - 1]! - front[n - 2]!) / 2];
    const middle = (edges[0]! + edges[1]!) / 2;
    const scale = Math.abs(edges[1]! - edges[0]!) / 200;
    const step =
      { "1/32 in": 25.4 / 32 }[(fit as { markStep: string }).markStep] ?? (fit as { markStep: number }).markStep ?? 0.5;
    let compared = 0;
    for (const leaf of picture) {
      for (const [level, radius] of [
        [1, 50 * scale],
        [2, 80 * scale],
      ] as const) {
        const half = Math.sqrt(radius ** 2 - (leaf.x[level - 1]! - middle) ** 2);
        if (!(half >= 4)) continue;
        const shown = leaf.spans.filter((span) => span.level <= level);
        // Published x has three decimals, and the outline strays from the circle by 1/200000 of the picture.
        const allowed = step / 2 + 1e-4 + (0.002 * radius) / half;
        expect(Math.abs(shown[0]!.from - (105 - half))).toBeLessThanOrEqual(allowed);
        expect(Math.abs(shown.at(-1)!.to - (105 + half))).toBeLessThanOrEqual(allowed);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(150);
  });

  it("show the middle disc where the near one's tip has passed its edge", () => {
    const pattern = discKit({}, {});
    const levels = new Set(pattern.leaves.map((leaf) => leaf.spans.map((span) => span.level).join("")));
    expect([...levels].sort()).toEqual(["3", "32123", "323"]);
  });
});
