import { describe, expect, it } from "vitest";
import { published } from "../../core/pattern/published.ts";
import { readMadeKit } from "../../input/kit/kit-folders.ts";
import { cellEdges, readingPositions } from "../fan.ts";

const HEAD = 20;

/** W 140, front depth 20, block 20, 200 leaves of which 180 carry the picture; a ring of radii 0.33 and 0.47 of the box. */
function ringPattern(degrees: number) {
  const disc = (r: number) => `M${100 - r} 100a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200"><path id="ring" fill-rule="evenodd" d="${disc(94)}${disc(66)}"/></svg>`;
  return published(
    readMadeKit(
      {
        title: "Ring",
        summary: "A ring.",
        picture: { file: "picture.svg", levels: { ring: ["#ring"] }, crop: "canvas" },
        levels: [
          { name: "ring", depth: 20 },
          { name: "ground", depth: 30, background: true },
        ],
        book: { leafHeight: 400, leafWidth: 140, blockThickness: 20, leaves: 200 },
        fit: { borderLeaves: [10, 10], head: HEAD, height: "solve", opening: degrees, markStep: 0.1, leastTab: 0 },
      },
      svg,
    ),
  );
}

/** Cell edges of the front level's tips, by the oracle's own trigonometry. */
function cellsAt(degrees: number): number[] {
  const opening = (degrees * Math.PI) / 180;
  const fan = { leafWidth: 140, blockThickness: 20, leaves: 200, opening, spine: "flat", direction: "ltr" } as const;
  return cellEdges(readingPositions(fan, 11, 190, 20, "front"));
}

const inRing = (s: number, v: number) => {
  const r = Math.hypot(s - 0.5, v - 0.5);
  return r >= 0.33 && r <= 0.47;
};

/** Intersection over union of the drawn ring with what the leaves show, each leaf filling its cell; a grid of 800 × 800. */
function overlap(edges: readonly number[], shows: (cell: number, v: number) => boolean): number {
  const grid = 800;
  const width = edges.at(-1)! - edges[0]!;
  let [both, either, cell] = [0, 0, 0];
  for (let i = 0; i < grid; i += 1) {
    const s = (i + 0.5) / grid;
    while (edges[cell + 1]! < edges[0]! + s * width) cell += 1;
    for (let row = 0; row < grid; row += 1) {
      const v = (row + 0.5) / grid;
      const [drawn, shown] = [inRing(s, v), shows(cell, v)];
      if (drawn && shown) both += 1;
      if (drawn || shown) either += 1;
    }
  }
  return both / either;
}

// Source: numerical sampling made for this project: a ring keeps its shape (0.98 or more) when its columns are read where
// the tips stand, and becomes a squat oval when they are read at equal distances. `stated` is to ± 0.01.
describe("the true shape of a ring", () => {
  it.each([
    [60, 0.957],
    [90, 0.901],
    [110, 0.851],
    [150, 0.719],
  ])("at %d° the program's spans keep 0.98 of it, equal slices %d", (degrees, stated) => {
    const edges = cellsAt(degrees);
    const pattern = ringPattern(degrees);
    const { height } = pattern.fit;
    const leaves = pattern.leaves.filter((leaf) => leaf.patternPage !== null);
    expect(leaves).toHaveLength(180);
    expect(pattern.fit.width).toBeCloseTo(edges[180]! - edges[0]!, 2);
    const byProgram = overlap(edges, (cell, v) => {
      const u = HEAD + v * height;
      return leaves[cell]!.spans.some((span) => span.level === 1 && span.from <= u && u < span.to);
    });
    expect(byProgram).toBeGreaterThanOrEqual(0.98);
    const byEqualSlices = overlap(edges, (cell, v) => inRing((cell + 0.5) / 180, v));
    expect(Math.abs(byEqualSlices - stated)).toBeLessThan(0.01);
  });
});
