import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Frame, type Solution, solveFit, type Wish } from "../../../src/core/fit/solve.ts";
import { Problem } from "../../../src/core/problem.ts";
import { displayedWidth } from "../../oracle/fan.ts";

const BOOK = { leaves: 204, leafWidth: 140, blockThickness: 24, spine: "flat", direction: "ltr" } as const;
const FRAME: Frame = {
  fan: BOOK,
  frontDepth: 18,
  view: "front",
  firstLeaf: 12,
  mostLeaves: 180,
  units: "mm",
  aspect: 1,
};

/** The oracle's displayed width of picture leaves in a frame. */
function widthOf(frame: Frame, opening: number, count: number): number {
  const first = frame.firstLeaf + 1;
  return displayedWidth({ ...frame.fan, opening }, first, first + count - 1, frame.frontDepth, frame.view);
}

const frames = fc
  .record({
    leaves: fc.integer({ min: 60, max: 400 }),
    borders: fc.tuple(fc.integer({ min: 0, max: 25 }), fc.integer({ min: 0, max: 25 })),
    leafWidth: fc.integer({ min: 90, max: 200 }),
    caliper: fc.double({ min: 0.06, max: 0.2, noNaN: true }),
    frontDepth: fc.integer({ min: 8, max: 30 }),
    aspect: fc.double({ min: 0.5, max: 2, noNaN: true }),
    spine: fc.constantFrom("flat" as const, "rounded" as const),
    direction: fc.constantFrom("ltr" as const, "rtl" as const),
    view: fc.constantFrom("front" as const, "along" as const),
  })
  .map(
    (m): Frame => ({
      fan: {
        leaves: m.leaves,
        leafWidth: m.leafWidth,
        blockThickness: m.leaves * m.caliper,
        spine: m.spine,
        direction: m.direction,
      },
      frontDepth: m.frontDepth,
      view: m.view,
      firstLeaf: m.borders[0],
      mostLeaves: m.leaves - m.borders[0] - m.borders[1],
      units: "mm",
      aspect: m.aspect,
    }),
  );
const openings = fc.double({ min: 0.3, max: 3, noNaN: true });

const solve = (frame: Frame, wish: Partial<Wish>): Solution =>
  solveFit({ pictureLeaves: "fill", height: "solve", opening: "solve", ...wish }, frame);

const problemOf = (frame: Frame, wish: Partial<Wish>): Problem => {
  try {
    solve(frame, wish);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error("it fits");
};

/** The number before a unit in a sentence. */
const figure = (text: string, pattern: RegExp): number => Number(pattern.exec(text)![1]);

describe("solveFit(wish, frame)", () => {
  it("gives the height that keeps the picture's shape", () => {
    const { height, width, stretch } = solve({ ...FRAME, aspect: 0.8 }, { opening: 1.2 });
    expect(width).toBeCloseTo(widthOf(FRAME, 1.2, 180), 9);
    expect(height).toBeCloseTo(width / 0.8, 9);
    expect(stretch).toBeCloseTo(1, 12);
  });

  it("gives back each of the three from the other two", () => {
    fc.assert(
      fc.property(frames, openings, fc.double({ min: 0.5, max: 1, noNaN: true }), (frame, opening, share) => {
        const count = Math.max(20, Math.round(frame.mostLeaves * share));
        fc.pre(count <= frame.mostLeaves);
        const { height } = solve(frame, { pictureLeaves: count, opening });
        expect(solve(frame, { pictureLeaves: count, height }).opening).toBeCloseTo(opening, 6);
        const byLeaves = solve(frame, { pictureLeaves: "solve", height, opening });
        expect(byLeaves.pictureLeaves).toBe(count);
        expect(byLeaves.stretch).toBeCloseTo(1, 9);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it("takes the whole number of leaves whose width is nearest", () => {
    for (const height of [60, 77.7, 100, 123.4]) {
      const { pictureLeaves } = solve(FRAME, { pictureLeaves: "solve", height, opening: 1.1 });
      const missed = (count: number) => Math.abs(widthOf(FRAME, 1.1, count) - height);
      const best = Array.from({ length: 179 }, (_, i) => i + 2).reduce((a, b) => (missed(b) < missed(a) ? b : a));
      expect(pictureLeaves).toBe(best);
    }
  });

  it("says how far a picture is from its drawn shape when nothing is solved", () => {
    const { stretch, width } = solve(FRAME, { height: 100, opening: 1.1 });
    expect(stretch).toBeCloseTo(widthOf(FRAME, 1.1, 180) / 100, 9);
    expect(width).toBeCloseTo(widthOf(FRAME, 1.1, 180), 9);
  });

  it("opens beyond flat only for pieces read while walking round", () => {
    const along: Frame = { ...FRAME, view: "along" };
    const height = widthOf(along, 4.5, 180);
    expect(solve(along, { height }).opening).toBeCloseTo(4.5, 6);
    const front = problemOf(FRAME, { height: widthOf(FRAME, Math.PI, 180) + 1 });
    expect(front.allowed).toContain("180°");
    expect(problemOf(along, { height: widthOf(along, 2 * Math.PI, 180) + 1 }).allowed).toContain("360°");
  });
});

describe("what solveFit says would fit", () => {
  it("at the widest opening: the height it names fits and 0.5 mm more does not", () => {
    const problem = problemOf(FRAME, { pictureLeaves: 100, height: 200 });
    expect(problem.field).toBe("fit.height");
    expect(problem.given).toBe("a picture 200 mm high is 200 mm wide");
    const most = widthOf(FRAME, Math.PI, 100);
    expect(figure(problem.allowed, /at most ([\d.]+) mm with 100 picture leaves/)).toBeCloseTo(most, 1);
    const height = figure(problem.remedy, /lower the height to ([\d.]+) mm/);
    expect(solve(FRAME, { pictureLeaves: 100, height }).stretch).toBeCloseTo(1, 6);
    expect(() => solve(FRAME, { pictureLeaves: 100, height: height + 0.5 })).toThrow(Problem);
  });

  it("at the widest opening: the leaves it names fit in the middle of the book, and no fewer than that and more than now do", () => {
    fc.assert(
      fc.property(frames, fc.double({ min: 1.02, max: 1.6, noNaN: true }), (frame, excess) => {
        const widest = frame.view === "front" ? Math.PI : 2 * Math.PI;
        const count = Math.round(frame.mostLeaves / 2);
        const height = (widthOf(frame, widest, count) / frame.aspect) * excess;
        const { remedy } = problemOf(frame, { pictureLeaves: count, height });
        const leaves = /use (\d+) picture leaves/.exec(remedy)?.[1];
        const middle = (n: number): Frame => ({
          ...frame,
          firstLeaf: Math.floor((frame.fan.leaves - n) / 2),
          mostLeaves: n,
        });
        if (leaves === undefined) {
          expect(() => solve(middle(frame.fan.leaves), { height })).toThrow("at most");
          return;
        }
        expect(solve(middle(Number(leaves)), { height }).stretch).toBeCloseTo(1, 6);
        if (Number(leaves) > count + 1) expect(() => solve(middle(Number(leaves) - 1), { height })).toThrow(Problem);
      }),
      { seed: 4, numRuns: 40 },
    );
  });

  it("too few leaves at a stated opening: the opening and the height it names fit", () => {
    const wish = { pictureLeaves: "solve", height: 130, opening: (40 * Math.PI) / 180 } as const;
    const problem = problemOf(FRAME, wish);
    expect(problem.field).toBe("fit.pictureLeaves");
    expect(problem.given).toContain("130 mm high and 130 mm wide at 40°");
    expect(figure(problem.allowed, /show ([\d.]+) mm/)).toBeCloseTo(widthOf(FRAME, wish.opening, 180), 1);
    const degrees = figure(problem.remedy, /open the book to (\d+)°/);
    const opened = solve(FRAME, { ...wish, opening: (degrees * Math.PI) / 180 });
    expect(opened.pictureLeaves).toBeLessThanOrEqual(180);
    expect(Math.abs(opened.stretch - 1)).toBeLessThan(0.01);
    expect(() => solve(FRAME, { ...wish, opening: ((degrees - 2) * Math.PI) / 180 })).toThrow(Problem);
    const height = figure(problem.remedy, /lower the height to ([\d.]+) mm/);
    expect(solve(FRAME, { ...wish, height }).pictureLeaves).toBeGreaterThan(178);
  });

  it("too few leaves at any opening: no opening is named", () => {
    const { remedy } = problemOf(FRAME, { pictureLeaves: "solve", height: 400, opening: 1 });
    expect(remedy).not.toContain("open the book");
    const height = figure(remedy, /^lower the height to ([\d.]+) mm/);
    expect(solve(FRAME, { pictureLeaves: "solve", height, opening: 1 }).pictureLeaves).toBeLessThanOrEqual(180);
  });

  it("a picture narrower than the closed leaves: the height it names fits", () => {
    const problem = problemOf(FRAME, { height: 15 });
    // Closed, 180 leaves of 24/204 mm each.
    expect(problem.allowed).toContain("180 picture leaves of this book are 21.2 mm thick");
    const height = figure(problem.remedy, /raise the height to at least ([\d.]+) mm/);
    expect(solve(FRAME, { height }).opening).toBeGreaterThan(0);
    expect(() => solve(FRAME, { height: height - 0.5 })).toThrow(Problem);
  });
});
