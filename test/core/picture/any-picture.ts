import type { LevelMap, LevelShape } from "../../../src/core/picture/level-map.ts";
import { fc } from "../../seed.ts";
import { circleRing } from "../geometry/plane.ts";
import { box } from "../window/made.ts";

export const WIDTH = 100;
export const HEIGHT = 80;

/** On a coarse grid, so that sides are shared and upright sides run through lines that are read there, or anywhere. */
const place = (most: number) =>
  fc.oneof(
    fc.integer({ min: -2, max: 12 }).map((n) => (n * most) / 10),
    fc.double({ min: -0.2 * most, max: 1.2 * most, noNaN: true }),
  );
const corner = fc.tuple(place(WIDTH), place(HEIGHT));
const ring = fc.array(corner, { minLength: 3, maxLength: 12 });
const dot = fc
  .tuple(corner, fc.double({ min: 0.5, max: 20, noNaN: true }))
  .map(([[x, y], radius]) => circleRing(x, y, radius, 24));
const rings = fc.oneof(
  fc.array(ring, { minLength: 1, maxLength: 3 }),
  dot.map((one) => [one]),
);
const shape = fc.record({ level: fc.integer({ min: 1, max: 4 }), rule: fc.constantFrom("nonzero", "evenodd"), rings });

/** Strips across the picture, more than one block of the sorter has. */
const hatch = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.double({ min: -30, max: 30, noNaN: true }))
  .map(([count, fall]): LevelShape[] =>
    Array.from({ length: count }, (_, i) => {
      const [top, high] = [(i * HEIGHT) / count, HEIGHT / count / 2];
      const strip = [
        [-5, top],
        [WIDTH + 5, top + fall],
        [WIDTH + 5, top + fall + high],
        [-5, top + high],
      ] as const;
      return { level: 1 + (i % 4), rule: "nonzero", rings: [strip] };
    }),
  );

/** Levels inside each other. */
const nested = fc.integer({ min: 1, max: 40 }).map((count): LevelShape[] =>
  Array.from({ length: count }, (_, i) => ({
    level: 1 + (i % 4),
    rule: "nonzero",
    rings: [box(i, i / 2, WIDTH - i, HEIGHT - i / 2)],
  })),
);

/** Pictures of all kinds: polygons that cross themselves and each other, dots, hatches, nested levels. */
export const anyPicture: fc.Arbitrary<LevelMap> = fc
  .oneof(
    fc.array(shape, { maxLength: 12 }),
    hatch,
    nested,
    fc.tuple(hatch, fc.array(shape, { maxLength: 4 })).map((all) => all.flat()),
  )
  .map((shapes) => ({ width: WIDTH, height: HEIGHT, background: 3, shapes }));

/** Where it is read: also on the grid, and beside the picture. */
export const anyLines = fc.array(place(WIDTH), { minLength: 1, maxLength: 30 });
