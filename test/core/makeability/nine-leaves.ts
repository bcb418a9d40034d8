import type { Kit } from "../../../src/core/kit/kit.ts";
import { kitOf } from "../pattern/made.ts";
import { box } from "../window/made.ts";

/** Half of the picture's width on the front of nine leaves: the last tip and half a pitch, 89.990 + (89.990 − 70) / 2. */
export const EDGE = 99.9854;

/**
 * Nine leaves without thickness, 10° apart from −40° to 40°, tips at 140 mm and at 70 mm from the gutter. Seen from the front
 * the tips at 10°, 20°, 30°, 40° stand 24.311, 47.883, 70 and 89.990 mm from the middle, deep ones at half of that. The
 * picture is background but for upright bands of the front level, given in mm from the middle, as high as the picture (100 mm).
 */
export function nineLeaves(bands: readonly (readonly [from: number, to: number])[], changes: Partial<Kit> = {}): Kit {
  const kit = kitOf({
    levels: [
      { name: "band", depth: 10, line: undefined, background: false },
      { name: "ground", depth: 80, line: undefined, background: true },
    ],
    book: { leafWidth: 150, blockThickness: 1e-6, leaves: 9, lastPage: 8, pageOneLeaf: 1 as never },
    fit: {
      borderLeaves: [0, 0],
      shape: { solve: "nothing", pictureLeaves: "fill", height: 100, opening: Math.PI / 2 },
      view: "front",
      spine: "flat",
      foldStyle: "stepped",
    },
    picture: {
      width: 2 * EDGE,
      height: 100,
      background: 2,
      shapes: bands.map(([from, to]) => ({
        level: 1,
        rule: "nonzero",
        rings: [box(from + EDGE, 0, to + EDGE, 100)],
      })),
    },
  });
  return { ...kit, ...changes };
}
