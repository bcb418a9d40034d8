import { describe, expect, it } from "vitest";
import { creaseAt, flapOf, isTurned } from "../../../src/core/corner/crease.ts";
import {
  depthAt,
  flapsOf,
  foldCorners,
  foldEmpty,
  type LeafFold,
  lyingAt,
} from "../../../src/core/corner/leaf-fold.ts";
import { fc } from "../../seed.ts";
import { cornerAt, type FoldLine, furthestEnd, type LeafSize, layersAt } from "./folded-leaf.ts";

const STEPS = [0.5, 1, 25.4 / 32];

/** A leaf of any proportion, and a strip that it shows, on the step. */
const leaf = fc
  .record({
    height: fc.integer({ min: 60, max: 500 }),
    width: fc.integer({ min: 40, max: 300 }),
    clearance: fc.integer({ min: 0, max: 20 }),
    step: fc.constantFrom(...STEPS),
    top: fc.double({ min: 0, max: 1, noNaN: true }),
    long: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ height, width, clearance, step, top, long }) => {
    const from = Math.floor((top * height * 0.95) / step) * step;
    const to = Math.min(height, from + Math.max(3, Math.floor((long * (height - from)) / step) * step));
    return { size: { height, width }, reach: width - clearance, step, from, to };
  });

const roomOf = ({ size, reach, step }: { size: LeafSize; reach: number; step: number }) => ({
  leafHeight: size.height,
  reach,
  step,
});

function linesOf(fold: LeafFold): FoldLine[] {
  if (fold.kind === "straight") return [];
  return fold.creases.map(({ corner, from, to }) => ({ corner, a: [from.at, from.depth], b: [to.at, to.depth] }));
}

const flapsAt = (fold: LeafFold, height: number) =>
  flapsOf(fold)
    .map((flap) => lyingAt(flap, height))
    .filter((lies) => lies !== undefined);

describe("a crease, against corners mirrored in it", () => {
  it("goes as near to 45° as the folded corner has room for, to the step", () => {
    fc.assert(
      fc.property(leaf, fc.constantFrom("head" as const, "tail" as const), ({ from, to, ...one }, corner) => {
        const mark = corner === "head" ? from : to;
        const crease = creaseAt(mark, corner, roomOf(one));
        const edge = corner === "head" ? 0 : one.size.height;
        if (Math.abs(mark - edge) < 1e-9) {
          expect(crease).toBeUndefined();
          return;
        }
        const end = furthestEnd(mark, corner, one.size, one.reach);
        expect(crease!.from).toEqual({ at: mark, depth: 0 });
        expect(crease!.to.at).toBe(edge);
        expect(crease!.to.depth).toBeLessThanOrEqual(end + 1e-4);
        expect(crease!.to.depth).toBeGreaterThan(end - one.step - 1e-4);
        const line: FoldLine = { corner, a: [mark, 0], b: [edge, crease!.to.depth] };
        const landed = cornerAt(line, one.size);
        expect(landed[1]).toBeLessThanOrEqual(one.reach + 1e-4);
        expect(flapOf(crease!)[2].at).toBeCloseTo(landed[0], 6);
        expect(flapOf(crease!)[2].depth).toBeCloseTo(landed[1], 6);
        // At 45° the corner's own edge lies level, at the mark; turned, it rises toward its own end of the leaf.
        if (isTurned(crease!)) expect(Math.abs(landed[0] - edge)).toBeLessThan(Math.abs(mark - edge));
        else expect(landed[0]).toBeCloseTo(mark, 6);
      }),
    );
  });

  it("by hand: 40 mm below the head of a leaf that is wide enough it ends 40 mm inward, and the corner lies there", () => {
    const crease = creaseAt(40, "head", { leafHeight: 200, reach: 100, step: 0.5 })!;
    expect(crease).toEqual({ corner: "head", from: { at: 40, depth: 0 }, to: { at: 0, depth: 40 } });
    expect(flapOf(crease)[2]).toEqual({ at: 40, depth: 40 });
  });

  it("by hand: twice as long as the reach it stands at 15° to the fore-edge, tan 15° = 0.26795", () => {
    const crease = creaseAt(200, "head", { leafHeight: 300, reach: 100, step: 0.001 })!;
    expect(crease.to.depth).toBeCloseTo(200 * Math.tan(Math.PI / 12), 2);
    expect(flapOf(crease)[2].depth).toBeCloseTo(100, 1);
  });
});

describe("a folded leaf, against points mirrored in its creases", () => {
  const anyFold = leaf.chain((one) =>
    fc
      .constantFrom<LeafFold>(
        foldCorners({ from: one.from, to: one.to }, null, roomOf(one)),
        foldEmpty("middle", 20, roomOf(one)),
      )
      .map((fold) => ({ ...one, fold })),
  );
  const anywhere = fc.record({
    at: fc.double({ min: 0.001, max: 0.999, noNaN: true }),
    depth: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  it("has its body from the crease inward, and flaps where corners came to lie, on its body and never on each other", () => {
    fc.assert(
      fc.property(anyFold, fc.array(anywhere, { minLength: 20, maxLength: 20 }), ({ fold, size }, points) => {
        const lines = linesOf(fold);
        for (const point of points) {
          const [at, depth] = [point.at * size.height, point.depth * size.width];
          const layers = layersAt([at, depth], lines, size);
          const begins = depthAt(fold, at);
          const flaps = flapsAt(fold, at);
          const edges = [begins, ...flaps.flat()];
          if (edges.some((edge) => Math.abs(edge - depth) < 1e-6)) continue;
          expect(layers.body).toBe(depth > begins);
          expect(layers.flaps).toBe(flaps.filter(([from, to]) => from < depth && depth < to).length);
          expect(layers.flaps).toBeLessThan(2);
          if (layers.flaps > 0) expect(layers.body).toBe(true);
        }
      }),
    );
  });

  it("by hand: a strip from 30 to 70 of a leaf of 100, at three heights", () => {
    const fold = foldCorners({ from: 30, to: 70 }, null, { leafHeight: 100, reach: 60, step: 1 });
    expect([10, 30, 50, 90].map((at) => depthAt(fold, at))).toEqual([20, 0, 0, 20]);
    expect([10, 50, 90].map((at) => flapsAt(fold, at))).toEqual([[[20, 30]], [], [[20, 30]]]);
  });

  it("shows nothing at the fore-edge where it is folded straight", () => {
    const room = { leafHeight: 100, reach: 61, step: 0.5 };
    expect(foldEmpty("line", 18, room)).toEqual({ kind: "straight", depth: 18 });
    // With 61 mm free, half of it is 30.5.
    expect(foldEmpty("half", 18, room)).toEqual({ kind: "straight", depth: 30.5 });
    expect(foldEmpty("half", 18, { ...room, step: 1 })).toEqual({ kind: "straight", depth: 30 });
    expect(foldEmpty("middle", 18, room)).toMatchObject({ kind: "middle", at: 50, creases: [{}, {}] });
  });
});
