import { describe, expect, it } from "vitest";
import { sizeOf } from "../../../src/core/geometry/area.ts";
import { boxOf } from "../../../src/core/geometry/box.ts";
import type { ProblemError } from "../../../src/input/files/problem.ts";
import { drawOutline, outlineShape } from "../../../src/input/outlines/draw-outline.ts";
import type { OutlineFields, OutlineName } from "../../../src/input/outlines/schema.ts";

const mm = (length: number) => ({ mm: length });
const share = (part: number) => ({ share: part });

function drawn(fields: OutlineFields, width: number, height: number) {
  const name = Object.keys(fields)[0] as OutlineName;
  return drawOutline(name, fields, { size: { width, height }, level: 2, at: ["picture"] }).shapes[0]!;
}

/** Area inside outlines, by the rule evenodd: holes lie inside and count against it. */
function areaOf(fields: OutlineFields, width: number, height: number): number {
  const [outer, ...holes] = drawn(fields, width, height).rings;
  return sizeOf([outer!]) - holes.reduce((sum, hole) => sum + sizeOf([hole]), 0);
}

describe("drawOutline(name, fields, place)", () => {
  // Plane geometry: circle, ellipse, circular segment and regular star by their formulas, written out at each row.
  it.each<[string, OutlineFields, [number, number], number]>([
    ["a ring", { ring: { width: mm(12) } }, [120, 120], Math.PI * (60 ** 2 - 48 ** 2)],
    ["a ring with a share of its width", { ring: { width: share(0.1) } }, [120, 120], Math.PI * (60 ** 2 - 48 ** 2)],
    ["an oval ring", { ring: { width: mm(10) } }, [120, 80], Math.PI * (60 * 40 - 50 * 30)],
    ["an oval", { oval: {} }, [120, 80], Math.PI * 60 * 40],
    ["a round arch", { arch: { rise: undefined, top: "round" } }, [60, 100], 60 * 70 + (Math.PI * 30 ** 2) / 2],
    ["a low arch", { arch: { rise: mm(12), top: "round" } }, [60, 100], 60 * 88 + (Math.PI * 30 * 12) / 2],
    // Two sectors of 60° with the radius of the width, less the triangle that both count.
    [
      "an arch whose sides are equally long",
      { arch: { rise: undefined, top: "pointed" } },
      [60, 100],
      60 * (100 - 30 * Math.sqrt(3)) + 60 ** 2 * (Math.PI / 3 - Math.sqrt(3) / 4),
    ],
    // The square's half diagonal is the side over √2; the canvas is as large as the heart with the side 40.
    ["a heart", { heart: {} }, [40 * (Math.SQRT1_2 + 1), 20 * (3 * Math.SQRT1_2 + 1)], 40 ** 2 + Math.PI * 20 ** 2],
    // 2n triangles with two sides R and r about the angle π/n; four points make a canvas of 2R.
    ["a star", { star: { points: 4, inner: 0.5 } }, [80, 80], 8 * 0.5 * 40 * 20 * Math.sin(Math.PI / 4)],
    ["a crescent", { moon: { lit: 0.25, side: "right" } }, [80, 80], 0.25 * Math.PI * 40 ** 2],
    ["a half moon", { moon: { lit: 0.5, side: "left" } }, [80, 80], 0.5 * Math.PI * 40 ** 2],
    ["a moon nearly full", { moon: { lit: 0.9, side: "left" } }, [80, 80], 0.9 * Math.PI * 40 ** 2],
    ["a full moon", { moon: { lit: 1, side: "right" } }, [80, 80], Math.PI * 40 ** 2],
    ["a rectangle", { rectangle: { corner: undefined } }, [80, 50], 80 * 50],
    ["round corners", { rectangle: { corner: mm(10) } }, [80, 50], 80 * 50 - (4 - Math.PI) * 10 ** 2],
    ["straight ground", { ground: { height: mm(20), wave: undefined, waves: 2 } }, [80, 50], 80 * 20],
    ["ground with whole waves", { ground: { height: mm(20), wave: mm(6), waves: 3 } }, [80, 50], 80 * 20],
    // Half a wave more, which rises: ∫ 6 sin over half a wave of 160/… = 2 · 6 · (80/5π).
    [
      "ground with half a wave too many",
      { ground: { height: mm(20), wave: mm(6), waves: 2.5 } },
      [80, 50],
      80 * 20 + (2 * 6 * 80) / (5 * Math.PI),
    ],
    ["a border", { border: { width: mm(5), corner: undefined } }, [80, 50], 80 * 50 - 70 * 40],
    [
      "a border with round corners",
      { border: { width: mm(5), corner: mm(12) } },
      [80, 50],
      80 * 50 - (4 - Math.PI) * 12 ** 2 - (70 * 40 - (4 - Math.PI) * 7 ** 2),
    ],
  ])("%s has the area of its formula", (_, fields, [width, height], area) => {
    expect(areaOf(fields, width, height) / area).toBeCloseTo(1, 4);
  });

  it.each<[string, OutlineFields]>([
    ["ring", { ring: { width: mm(3) } }],
    ["oval", { oval: {} }],
    ["arch", { arch: { rise: undefined, top: "pointed" } }],
    ["heart", { heart: {} }],
    ["star", { star: { points: 5, inner: 0.4 } }],
    ["full moon", { moon: { lit: 1, side: "left" } }],
    ["rectangle", { rectangle: { corner: mm(8) } }],
    ["border", { border: { width: mm(4), corner: mm(2) } }],
  ])("a %s fills its canvas", (_, fields) => {
    const { left, top, right, bottom } = boxOf(drawn(fields, 90, 70).rings);
    for (const [found, wanted] of [
      [left, 0],
      [top, 0],
      [right, 90],
      [bottom, 70],
    ] as const)
      expect(found).toBeCloseTo(wanted, 3);
  });

  it("lights the side of the moon that is stated", () => {
    const middle = (side: "left" | "right") => boxOf(drawn({ moon: { lit: 0.1, side } }, 80, 80).rings);
    expect(middle("right").left).toBeCloseTo(40, 3);
    expect(middle("left").right).toBeCloseTo(40, 3);
  });

  it("stays at its level", () => {
    expect(drawn({ heart: {} }, 10, 10).level).toBe(2);
  });

  it.each<[string, OutlineFields, (string | number)[]]>([
    ["a band wider than half", { ring: { width: mm(40) } }, ["ring", "width"]],
    ["a border without an opening", { border: { width: mm(30), corner: undefined } }, ["border", "width"]],
    ["corners rounder than the side", { rectangle: { corner: share(0.9) } }, ["rectangle", "corner"]],
    ["a bow taller than its arch", { arch: { rise: mm(90), top: "round" } }, ["arch", "rise"]],
    ["a pointed arch that is too low", { arch: { rise: mm(20), top: "pointed" } }, ["arch", "rise"]],
    ["ground above its canvas", { ground: { height: mm(61), wave: undefined, waves: 1 } }, ["ground", "height"]],
    ["waves higher than their ground", { ground: { height: mm(10), wave: mm(11), waves: 1 } }, ["ground", "wave"]],
  ])("tells of %s", (_, fields, at) => {
    expect(() => drawn(fields, 80, 60)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ at: ["picture", ...at] })] }) as ProblemError,
    );
  });
});

describe("outlineShape(name, fields, box)", () => {
  const BOX = { width: 120, height: 90 };

  // By hand: a star of five points spans sin 72° to both sides, and from 1 above to cos 36° below.
  it.each<[OutlineName, OutlineFields, number]>([
    ["ring", { ring: { width: mm(3) } }, 1],
    ["moon", { moon: { lit: 0.2, side: "left" } }, 1],
    ["heart", { heart: {} }, (Math.SQRT1_2 + 1) / (1.5 * Math.SQRT1_2 + 0.5)],
    ["star", { star: { points: 5, inner: 0.4 } }, (2 * Math.sin((2 * Math.PI) / 5)) / (1 + Math.cos(Math.PI / 5))],
    ["oval", { oval: {} }, 120 / 90],
    ["border", { border: { width: mm(3), corner: undefined } }, 120 / 90],
  ])("%s", (name, fields, shape) => {
    const { width, height } = outlineShape(name, fields, BOX);
    expect(width / height).toBeCloseTo(shape, 9);
  });
});
