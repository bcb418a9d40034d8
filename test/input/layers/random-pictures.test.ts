import { describe, expect, it } from "vitest";
import { KitError } from "../../../src/input/files/message.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import type { KitPicture } from "../../../src/input/layers/kit-levels.ts";
import { pictureSchema } from "../../../src/input/layers/schema.ts";
import { fc } from "../../seed.ts";
import { BOAT, LEVELS, madePicture } from "./made-picture.ts";

const FILES = { "boat.svg": BOAT, "bad.svg": "<svg", "bad.png": "no picture" };

/** Mostly what can be made: of many fields, one that is wrong spoils all. */
const mostly = <T>(good: fc.Arbitrary<T>, bad: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 90, arbitrary: good }, { weight: 1, arbitrary: bad });

type Length = number | string;

const lengths = (most: number): fc.Arbitrary<Length> =>
  mostly<Length>(
    fc.oneof(
      fc.double({ min: 1, max: most, noNaN: true }),
      fc.integer({ min: 1, max: most }).map((percent) => `${percent}%`),
    ),
    fc.oneof(fc.double({ noNaN: true }), fc.constantFrom("1 in", "12 furlongs", "", "-5%", "900%")),
  );
const span = lengths(100);
const thin = lengths(9);
const level = mostly(fc.constantFrom("rim", "wall"), fc.constantFrom("rimm", ""));
const sometimes = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

const source = fc.oneof(
  fc.record({
    file: mostly(fc.constant("boat.svg"), fc.constantFrom("bad.svg", "bad.png", "gone.svg", "../x.svg")),
    names: sometimes(
      mostly<unknown>(fc.constantFrom("#sail", ["hull", "#sail"]), fc.constantFrom("#no", { fill: "#000" }, {})),
    ),
    crop: sometimes(fc.constantFrom("canvas", "drawing", { x: 0, y: 0, width: 9, height: 9 })),
    trace: mostly<string | undefined>(fc.constant(undefined), fc.constantFrom("silhouette", "tones")),
  }),
  fc.record({
    text: mostly<unknown>(
      fc.constantFrom("Moon", ["A", "fi"], "27 · 06\n"),
      fc.string({ maxLength: 12, unit: "grapheme" }),
    ),
    arc: sometimes(fc.integer({ min: -365, max: 365 })),
    spacing: sometimes(fc.double({ min: -0.6, max: 2, noNaN: true })),
    lineHeight: sometimes(fc.double({ min: 0.3, max: 3, noNaN: true })),
    weight: sometimes(fc.integer({ min: 0, max: 1010 })),
    font: sometimes(mostly(fc.constantFrom("literata", "Source Sans 3"), fc.constantFrom("x.ttf", "bad.svg"))),
  }),
  fc.record({ ring: fc.record({ width: thin }) }),
  fc.record({ oval: fc.constant({}) }),
  fc.record({ arch: fc.record({ rise: sometimes(lengths(50)), top: fc.constantFrom("round", "pointed") }) }),
  fc.record({
    star: fc.record({
      points: fc.integer({ min: 2, max: 61 }),
      inner: fc.double({ min: 0.04, max: 0.96, noNaN: true }),
    }),
  }),
  fc.record({
    moon: fc.record({ lit: fc.double({ min: 0.01, max: 1, noNaN: true }) }),
    heart: mostly<object | undefined>(fc.constant(undefined), fc.constant({})),
  }),
  fc.record({ rectangle: fc.record({ corner: sometimes(thin) }) }),
  fc.record({
    ground: fc.record({
      height: lengths(50),
      wave: sometimes(thin),
      waves: fc.double({ min: 0.2, max: 41, noNaN: true }),
    }),
  }),
  fc.record({ border: fc.record({ width: thin, corner: sometimes(thin) }) }),
  fc.record({ heart: fc.constant({}) }),
  mostly<object>(fc.constant({ oval: {} }), fc.constant({})),
);

const place = fc.record({
  at: sometimes(fc.tuple(span, span)),
  width: sometimes(span),
  height: sometimes(span),
  turn: sometimes(fc.integer({ min: -365, max: 365 })),
  mirror: sometimes(fc.boolean()),
});

const merged = (...parts: fc.Arbitrary<object>[]): fc.Arbitrary<object> =>
  fc.tuple(...parts).map((all) => Object.assign({}, ...all.map(known)));

/** Without keys that stand for nothing, as YAML has none. */
function known(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

const piece = merged(source, place);
const layer = merged(
  source,
  place,
  fc.record({
    level,
    join: sometimes(fc.array(piece, { maxLength: 2 })),
    cut: sometimes(fc.array(piece, { maxLength: 2 })),
  }),
);
const picture = fc.oneof(
  merged(source, fc.record({ level: sometimes(level), width: lengths(200) })),
  merged(
    fc.record({
      width: sometimes(span),
      height: fc.constant(90),
      layers: fc.array(layer, { minLength: 1, maxLength: 4 }),
    }),
  ),
);

/** A picture, or undefined where it is told what is wrong; anything else is thrown. */
function readOrTold(matter: object): KitPicture | undefined {
  const parsed = pictureSchema.safeParse(matter);
  if (!parsed.success) return undefined;
  try {
    return madePicture(matter, FILES, LEVELS.slice(0, 2));
  } catch (error) {
    if (error instanceof ProblemError || error instanceof KitError) return undefined;
    throw error;
  }
}

describe("kitPicture(kit, matter, levels) of random front matters", () => {
  it("makes a picture of finite outlines, or tells what is wrong", () => {
    let made = 0;
    fc.assert(
      fc.property(picture, (matter) => {
        const read = readOrTold(matter);
        if (!read) return;
        made += 1;
        const { width, height, shapes } = read.map;
        expect(width).toBeGreaterThan(0);
        expect(height).toBeGreaterThan(0);
        for (const ring of shapes.flatMap(({ rings }) => rings))
          for (const [x, y] of ring) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
      }),
      { numRuns: 200 },
    );
    // Enough of them are sound, so that more than messages is tried.
    expect(made).toBeGreaterThan(10);
  });
});
