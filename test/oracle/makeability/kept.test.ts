import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitting, seenBy } from "../../core/makeability/assessed.ts";
import { kitOf } from "../../core/pattern/made.ts";
import { seeded } from "../random-shapes.ts";
import { type Book, meets } from "./march.ts";

const WELL = { x: 62, y: 50, r: 34 };
const RAYS = 3000;

/** A book of 400 thin leaves with a round well, right of the middle, in a rim that fills the picture. */
function wellKit(direction: "ltr" | "rtl", spine: "flat" | "rounded"): Kit {
  const circle = Array.from({ length: 720 }, (_, i) => {
    const angle = (i * Math.PI) / 360;
    return [WELL.x + WELL.r * Math.cos(angle), WELL.y + WELL.r * Math.sin(angle)] as const;
  });
  const levels = [20, 32, 50].map((depth, k) => ({ name: `${k + 1}`, depth, line: undefined, background: k === 1 }));
  return kitOf({
    levels,
    book: { leafWidth: 140, blockThickness: 30, leaves: 400, lastPage: 700, direction },
    fit: {
      borderLeaves: [12, 12],
      shape: { solve: "opening", pictureLeaves: "fill", height: 120 },
      view: "front",
      spine,
      head: 40,
    },
    picture: {
      width: 100,
      height: 100,
      background: 2,
      shapes: [
        {
          level: 1,
          rule: "nonzero",
          rings: [
            [
              [0, 0],
              [100, 0],
              [100, 100],
              [0, 100],
            ],
          ],
        },
        { level: 3, rule: "nonzero", rings: [circle] },
      ],
    },
  });
}

function marched(kit: Kit, eye: number | undefined): { share: number; hidden: number } {
  const { pattern } = fitting(kit);
  const { book, fit } = pattern;
  const fan = { ...book, opening: fit.opening, spine: fit.spine };
  const looked: Book = { fan, depths: kit.levels.map(({ depth }) => depth), leaves: pattern.leaves, eye };
  const xs = pattern.leaves.filter(({ patternPage }) => patternPage !== null).map(({ x }) => x[0]!);
  const left = Math.min(...xs);
  const width = Math.max(...xs) - left;
  const random = seeded(7);
  const count = { wanted: 0, kept: 0, hidden: 0 };
  for (let i = 0; i < RAYS; i += 1) {
    const [px, py] = [100 * random(), 100 * random()];
    if (Math.hypot(px - WELL.x, py - WELL.y) >= WELL.r) continue;
    const met = meets(looked, left + (px / 100) * width, 40 + (py / 100) * 120);
    count.wanted += 1;
    if (met === 3) count.kept += 1;
    if (met === "side") count.hidden += 1;
  }
  return { share: count.kept / count.wanted, hidden: count.hidden / count.wanted };
}

describe("what a level keeps, against rays through every leaf", () => {
  it.each([
    ["ltr", "flat", undefined],
    ["rtl", "flat", undefined],
    ["ltr", "rounded", undefined],
    ["ltr", "flat", 600],
  ] as const)("%s, %s spine, eye at %s mm", (direction, spine, eye) => {
    const kit = wellKit(direction, spine);
    const well = seenBy(kit, eye ?? "far").levels[2]!;
    const { share, hidden } = marched(kit, eye);
    expect(share).toBeLessThan(0.9);
    // A thousand rays in the well tell a share to some 1.5 per cent.
    expect(Math.abs(well.share - share)).toBeLessThan(0.03);
    expect(Math.abs(well.hidden / well.wanted - hidden)).toBeLessThan(0.03);
  });
});
