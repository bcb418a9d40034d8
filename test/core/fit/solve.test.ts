import { describe, expect, it } from "vitest";
import type { FitFailure } from "../../../src/core/findings/failure.ts";
import type { Shape } from "../../../src/core/fit/shape.ts";
import { type Frame, type Solution, solveFit } from "../../../src/core/fit/solve.ts";
import { displayedWidth } from "../../oracle/fan.ts";
import { fc } from "../../seed.ts";

const BOOK = { leaves: 204, leafWidth: 140, blockThickness: 24, spine: "flat", direction: "ltr" } as const;
const FRAME: Frame = {
  fan: BOOK,
  frontDepth: 18,
  view: "front",
  firstIndex: 12,
  mostLeaves: 180,
  aspect: 1,
};

/** The oracle's displayed width of picture leaves in a frame. */
function widthOf(frame: Frame, opening: number, count: number): number {
  const first = frame.firstIndex + 1;
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
      firstIndex: m.borders[0],
      mostLeaves: m.leaves - m.borders[0] - m.borders[1],
      aspect: m.aspect,
    }),
  );
const openings = fc.double({ min: 0.3, max: 3, noNaN: true });

/** What a test states; of the three the one that is not stated is solved. */
interface Wish {
  readonly pictureLeaves?: "fill" | "solve" | number;
  readonly height?: number;
  readonly opening?: number;
}

function shapeOf({ pictureLeaves = "fill", height, opening }: Wish): Shape {
  if (pictureLeaves === "solve") return { solve: "pictureLeaves", height: height!, opening: opening! };
  if (opening === undefined) return { solve: "opening", pictureLeaves, height: height! };
  if (height === undefined) return { solve: "height", pictureLeaves, opening };
  return { solve: "nothing", pictureLeaves, height, opening };
}

const solve = (frame: Frame, wish: Wish): Solution => {
  const solved = solveFit(shapeOf(wish), frame);
  if ("kind" in solved) throw new Error(`no fit: ${solved.kind}`);
  return solved;
};

const failureOf = <K extends FitFailure["kind"]>(
  kind: K,
  frame: Frame,
  wish: Wish,
): Extract<FitFailure, { readonly kind: K }> => {
  const solved = solveFit(shapeOf(wish), frame);
  if (!("kind" in solved) || solved.kind !== kind) throw new Error(`not ${kind}: ${JSON.stringify(solved)}`);
  return solved as Extract<FitFailure, { readonly kind: K }>;
};

describe("solveFit(shape, frame)", () => {
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
        const byShape = solve(frame, { pictureLeaves: count, height });
        // Where two openings show the same width, the narrower is meant.
        expect(byShape.opening).toBeLessThan(opening + 1e-6);
        expect(byShape.stretch).toBeCloseTo(1, 9);
        const byLeaves = solve(frame, { pictureLeaves: "solve", height, opening });
        expect(byLeaves.pictureLeaves).toBe(count);
        expect(byLeaves.stretch).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
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

  it("takes two leaves at least", () => {
    for (const height of [0.1, widthOf(FRAME, 1.1, 2)])
      expect(solve(FRAME, { pictureLeaves: "solve", height, opening: 1.1 }).pictureLeaves).toBe(2);
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
    const front = failureOf("picture-too-wide", FRAME, { height: widthOf(FRAME, Math.PI, 180) + 1 });
    expect(front.widest).toBeCloseTo(Math.PI, 9);
    const round = failureOf("picture-too-wide", along, { height: widthOf(along, 2 * Math.PI, 180) + 1 });
    expect(round.widest).toBeCloseTo(2 * Math.PI, 9);
  });
});

// Laws of the trade's geometry, no source: the width first grows with the opening; where the picture lies on one side of the
// fan, or the spine is thick and round, it shrinks again before the book is flat.
describe("a picture that is widest before the book is flat", () => {
  const oneSided: Frame = {
    fan: { leaves: 60, leafWidth: 140, blockThickness: 9, spine: "rounded", direction: "ltr" },
    frontDepth: 18,
    view: "front",
    firstIndex: 0,
    mostLeaves: 29,
    aspect: 1,
  };
  const sampled = Array.from({ length: 4000 }, (_, i) => widthOf(oneSided, ((i + 1) / 4000) * Math.PI, 29));
  const most = Math.max(...sampled);

  it("is shown on the rising side, also beyond what the flat book shows", () => {
    expect(most).toBeGreaterThan(widthOf(oneSided, Math.PI, 29) + 0.05);
    const height = (most + widthOf(oneSided, Math.PI, 29)) / 2;
    const { opening, width } = solve(oneSided, { height });
    expect(width).toBeCloseTo(height, 6);
    expect(opening).toBeLessThan((sampled.indexOf(most) / 4000) * Math.PI + 1e-3);
  });

  it("is refused only beyond its widest, which is named with the opening that shows it", () => {
    const failure = failureOf("picture-too-wide", oneSided, { height: most + 0.1 });
    expect(failure.most).toBeCloseTo(most, 4);
    expect(widthOf(oneSided, failure.widest, 29)).toBeCloseTo(failure.most, 9);
    expect(failure.widest).toBeLessThan(Math.PI - 0.01);
  });

  it("is found for any book, side and spine", () => {
    fc.assert(
      fc.property(frames, fc.double({ min: 0, max: 1, noNaN: true }), (frame, share) => {
        const half = { ...frame, mostLeaves: Math.max(3, Math.floor(frame.mostLeaves / 3)) };
        const end = half.view === "front" ? Math.PI : 2 * Math.PI;
        const opening = 0.05 + share * (end - 0.05);
        // A hair less than what the opening shows, so that the widest of all is no matter of the last bit.
        const height = (widthOf(half, opening, half.mostLeaves) / half.aspect) * (1 - 1e-9);
        const solved = solveFit({ solve: "opening", pictureLeaves: "fill", height }, half);
        // The closed block may be thicker than a nearly closed fan is wide.
        if ("kind" in solved) expect(solved.kind).toBe("picture-too-narrow");
        else expect(solved.width).toBeCloseTo(height * half.aspect, 6);
      }),
      { numRuns: 150 },
    );
  });
});

describe("what solveFit says would fit", () => {
  it("at the widest opening: the height it names fits and more does not", () => {
    const wish = { pictureLeaves: 100, height: 200 };
    const failure = failureOf("picture-too-wide", FRAME, wish);
    expect(failure).toMatchObject({ height: 200, width: 200, leaves: 100 });
    expect(failure.most).toBeCloseTo(widthOf(FRAME, Math.PI, 100), 6);
    expect(solve(FRAME, { ...wish, height: failure.mostHeight - 1e-6 }).stretch).toBeCloseTo(1, 6);
    failureOf("picture-too-wide", FRAME, { ...wish, height: failure.mostHeight + 0.001 });
  });

  it("at the widest opening: the leaves it names fit in the middle of the book, and no fewer than that and more than now do", () => {
    fc.assert(
      fc.property(frames, fc.double({ min: 1.02, max: 1.6, noNaN: true }), (frame, excess) => {
        const count = Math.round(frame.mostLeaves / 2);
        const now = { ...frame, mostLeaves: count };
        const widest = Math.max(
          ...Array.from({ length: 400 }, (_, i) =>
            widthOf(now, ((i + 1) / 400) * (frame.view === "front" ? Math.PI : 2 * Math.PI), count),
          ),
        );
        const height = (widest / frame.aspect) * excess;
        const { enough } = failureOf("picture-too-wide", frame, { pictureLeaves: count, height });
        const middle = (n: number): Frame => ({
          ...frame,
          firstIndex: Math.floor((frame.fan.leaves - n) / 2),
          mostLeaves: n,
        });
        if (enough === undefined) {
          failureOf("picture-too-wide", middle(frame.fan.leaves), { height });
          return;
        }
        expect(solve(middle(enough), { height }).stretch).toBeCloseTo(1, 6);
        if (enough > count + 1) failureOf("picture-too-wide", middle(enough - 1), { height });
      }),
      { numRuns: 25 },
    );
  });

  it("names widths and heights of a picture that is not square, each with its own", () => {
    const low: Frame = { ...FRAME, aspect: 1.6 };
    const most = widthOf(low, Math.PI, 180);
    expect(failureOf("picture-too-wide", low, { height: 300 })).toMatchObject({
      height: 300,
      width: expect.closeTo(480, 9),
      most: expect.closeTo(most, 6),
      mostHeight: expect.closeTo(most / 1.6, 6),
    });
    expect(failureOf("picture-too-narrow", low, { height: 10 })).toMatchObject({
      width: expect.closeTo(16, 9),
      leastHeight: expect.closeTo((180 * 24) / 204 / 1.6, 3),
    });
    const few = failureOf("leaves-show-too-little", low, { pictureLeaves: "solve", height: 130, opening: 0.7 });
    expect(few.width).toBeCloseTo(208, 9);
    expect(few.most).toBeCloseTo(widthOf(low, 0.7, 180), 9);
    expect(few.mostHeight).toBeCloseTo(few.most / 1.6, 9);
  });

  it("asks for more leaves than there are now, though as many would do in the middle of the book", () => {
    const aside: Frame = { ...FRAME, firstIndex: 0, mostLeaves: 60 };
    const middle: Frame = { ...FRAME, firstIndex: 72, mostLeaves: 60 };
    const [shown, centred] = [aside, middle].map((frame) =>
      Math.max(...Array.from({ length: 400 }, (_, i) => widthOf(frame, ((i + 1) / 400) * Math.PI, 60))),
    ) as [number, number];
    expect(centred).toBeGreaterThan(shown + 1);
    const failure = failureOf("picture-too-wide", aside, { height: (shown + centred) / 2 });
    expect(failure).toMatchObject({ leaves: 60, enough: 61 });
  });

  it("too few leaves at a stated opening: the opening and the height it names fit", () => {
    const wish = { pictureLeaves: "solve", height: 130, opening: (40 * Math.PI) / 180 } as const;
    const failure = failureOf("leaves-show-too-little", FRAME, wish);
    expect(failure).toMatchObject({ height: 130, width: 130, opening: wish.opening, leaves: 180 });
    expect(failure.most).toBeCloseTo(widthOf(FRAME, wish.opening, 180), 6);
    const opened = solve(FRAME, { ...wish, opening: failure.openingNeeded! + 1e-9 });
    expect(opened.pictureLeaves).toBe(180);
    expect(opened.stretch).toBeCloseTo(1, 6);
    failureOf("leaves-show-too-little", FRAME, { ...wish, opening: failure.openingNeeded! - 0.02 });
    expect(solve(FRAME, { ...wish, height: failure.mostHeight }).pictureLeaves).toBe(180);
  });

  // By hand: what lies nearer to all leaves than to one more is shown with all of them.
  it.each([180, 3, 2])(
    "takes all of %d leaves up to half of the last one beyond them, and no further",
    (mostLeaves) => {
      const frame = { ...FRAME, mostLeaves };
      const most = widthOf(frame, 1.1, mostLeaves);
      const last = mostLeaves > 2 ? most - widthOf(frame, 1.1, mostLeaves - 1) : 0;
      const at = (share: number) => ({ pictureLeaves: "solve", height: most + share * last, opening: 1.1 }) as const;
      expect(solve(frame, at(0.49)).pictureLeaves).toBe(mostLeaves);
      const beyond = mostLeaves > 2 ? at(0.51) : { ...at(0), height: most + 0.001 };
      expect(failureOf("leaves-show-too-little", frame, beyond).leaves).toBe(mostLeaves);
    },
  );

  it("too few leaves at any opening: no opening is named", () => {
    const wish = { pictureLeaves: "solve", height: 400, opening: 1 } as const;
    const failure = failureOf("leaves-show-too-little", FRAME, wish);
    expect(failure.openingNeeded).toBeUndefined();
    expect(solve(FRAME, { ...wish, height: failure.mostHeight }).pictureLeaves).toBeLessThanOrEqual(180);
  });

  it("a picture narrower than the closed leaves: the height it names fits", () => {
    const failure = failureOf("picture-too-narrow", FRAME, { height: 15 });
    // Closed, 180 leaves of 24/204 mm each.
    expect(failure.least).toBeCloseTo((180 * 24) / 204, 3);
    expect(failure.leastHeight).toBeCloseTo(failure.least, 9);
    expect(solve(FRAME, { height: failure.leastHeight + 1e-6 }).opening).toBeGreaterThan(0);
    failureOf("picture-too-narrow", FRAME, { height: failure.leastHeight - 0.01 });
  });
});
