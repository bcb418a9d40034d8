import { FillRule as ClipperRule, ClipType, type Path64, PathType } from "clipper2-ts/dist/Core.js";
import { Clipper64 } from "clipper2-ts/dist/Engine.js";
import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { asCutKit } from "../../../src/core/kit/cut-kit.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitKit } from "../../../src/core/pattern/fit-kit.ts";
import type { LevelShape } from "../../../src/core/picture/level-map.ts";
import { circleRing, type Ring } from "../geometry/plane.ts";
import { madeKit } from "../kit/made-kit.ts";

// Compared with plain work in the same process, in turns, because other programs may hold the processor for a while: they
// hold up both alike. The bounds are loose: an idle machine stays far below them.
const TURNS = 5;

const LINES = 400;
const SIDE = 100;

/** A wavy ring. */
function wave(x: number, y: number, radius: number, corners: number, phase: number): Ring {
  return circleRing(0, 0, 1, corners).map(([dx, dy], i) => {
    const reach = radius * (1 + 0.2 * Math.sin((18 * Math.PI * i) / corners + phase));
    return [x + reach * dx, y + reach * dy] as const;
  });
}

const level = (i: number): number => 1 + 2 * (i % 2);

/** 10,000 sides. */
const WAVES = Array.from({ length: 20 }, (_, i): LevelShape => {
  const ring = wave(10 + ((i * 271) % 80), 10 + ((i * 593) % 80), 6 + ((i * 37) % 9), 500, i);
  return { level: level(i), rule: "evenodd", rings: [ring] };
});

const strips = (count: number): LevelShape[] =>
  Array.from({ length: count }, (_, i): LevelShape => {
    const [top, high] = [(i * SIDE) / count, (0.4 * SIDE) / count];
    const ring: Ring = [
      [0, top],
      [SIDE, top + high],
      [SIDE, top + 2 * high],
      [0, top + high],
    ];
    return { level: 1, rule: "nonzero", rings: [ring] };
  });

/** 200 picture leaves and three levels, so 400 lines of the picture are read. */
const kitOf = (shapes: readonly LevelShape[]): Kit =>
  madeKit({
    book: {
      leafHeight: 240,
      leafWidth: 160,
      blockThickness: 25,
      leaves: 220,
      pageOneLeaf: leafNumber(1),
      lastPage: 440,
    },
    fit: { borderLeaves: [10, 10], shape: { solve: "opening", pictureLeaves: "fill", height: 150 } },
    picture: { width: SIDE, height: SIDE, background: 2, shapes },
  });

/** How many times as long the first takes as the second: each at its quickest. */
function ratio(one: () => unknown, other: () => unknown): number {
  const quickest = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let turn = 0; turn < TURNS; turn += 1)
    for (const [i, run] of [one, other].entries()) {
      const start = performance.now();
      run();
      quickest[i] = Math.min(quickest[i]!, performance.now() - start);
    }
  return quickest[0]! / quickest[1]!;
}

function patternOf(shapes: readonly LevelShape[]): void {
  expect(fitKit(asCutKit(kitOf(shapes))).fits).toBe(true);
}

/** The polygon library, asked once for what lies of all lines in all shapes. */
function linesByLibrary(shapes: readonly LevelShape[]): void {
  const clipper = new Clipper64();
  const path = (ring: Ring): Path64 => ring.map(([x, y]) => ({ x: Math.round(x * 1e5), y: Math.round(y * 1e5) }));
  clipper.addPaths(
    shapes.flatMap(({ rings }) => rings.map(path)),
    PathType.Clip,
  );
  const lines = Array.from({ length: LINES }, (_, i) => ((i + 0.37) * SIDE) / LINES);
  clipper.addOpenSubject(
    lines.map((x) =>
      path([
        [x, 0],
        [x, SIDE],
      ]),
    ),
  );
  const [closed, open]: [Path64[], Path64[]] = [[], []];
  clipper.execute(ClipType.Intersection, ClipperRule.NonZero, closed, open);
  expect(open.length).toBeGreaterThan(LINES / 2);
}

/** One pass that puts down every crossing of the lines with the outlines. */
function everyCrossing(shapes: readonly LevelShape[]): void {
  const crossings: number[] = [];
  for (const { rings } of shapes)
    for (const ring of rings)
      for (const [i, [bx, by]] of ring.entries()) {
        const [ax, ay] = ring.at(i - 1)!;
        const [left, right] = ax < bx ? [ax, bx] : [bx, ax];
        for (let line = Math.ceil((left * LINES) / SIDE); line < (right * LINES) / SIDE; line += 1)
          crossings.push(line, ay + (((line * SIDE) / LINES - ax) / (bx - ax)) * (by - ay));
      }
  expect(crossings.length).toBeGreaterThan(LINES);
}

describe("the pattern of 200 leaves", () => {
  it("of a picture of 10,000 sides takes a fraction of what the polygon library takes for the lines alone", () => {
    const times = ratio(
      () => patternOf(WAVES),
      () => linesByLibrary(WAVES),
    );

    expect(times).toBeLessThan(1 / 5);
  });

  it("of a picture of 10,000 sides takes no more than some passes over all crossings", () => {
    const times = ratio(
      () => patternOf(WAVES),
      () => everyCrossing(WAVES),
    );

    expect(times).toBeLessThan(15);
  });

  it("grows no faster than the strips of a hatch", () => {
    const times = ratio(
      () => patternOf(strips(400)),
      () => patternOf(strips(100)),
    );

    expect(times).toBeLessThan(10);
  });
});
