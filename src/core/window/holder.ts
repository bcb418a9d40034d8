import type { Point } from "../geometry/point.ts";
import type { Part } from "./part.ts";

const BEYOND = 20;
const HEIGHT = 36;
const SLOT_DEPTH = 22;
const SLOT_WIDTH = 2;
/** Inside each slot a narrow tongue goes down between the leaves; between the tongues the strip rests on the head edges. */
const TONGUE = 2;

/** A strip of card with two slots as far apart as the outer picture leaves' folded edges at the head: set there, it keeps the book at its opening while glue dries. */
export function holderOf(holdWidth: number): Part {
  const left = BEYOND;
  const right = BEYOND + holdWidth;
  const half = SLOT_WIDTH / 2;
  const rest = HEIGHT - SLOT_DEPTH;
  const slot = (x: number): Point[] => [
    [x + half, HEIGHT],
    [x + half, rest],
    [x - half, rest],
    [x - half, HEIGHT],
  ];
  const arch: Point[] = [
    [right - half - TONGUE, HEIGHT],
    [right - half - TONGUE, rest],
    [left + half + TONGUE, rest],
    [left + half + TONGUE, HEIGHT],
  ];
  return {
    id: "holder",
    kind: "holder",
    material: "card",
    count: 1,
    frame: "own",
    outlines: [
      [[0, 0], [right + BEYOND, 0], [right + BEYOND, HEIGHT], ...slot(right), ...arch, ...slot(left), [0, HEIGHT]],
    ],
    scores: [],
    marks: [
      {
        line: [
          [left, 0],
          [left, HEIGHT - SLOT_DEPTH],
        ],
        kind: "first-picture-leaf",
      },
      {
        line: [
          [right, 0],
          [right, HEIGHT - SLOT_DEPTH],
        ],
        kind: "last-picture-leaf",
      },
    ],
  };
}
