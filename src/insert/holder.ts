import type { Part } from "./part.ts";

const BEYOND = 20;
const HEIGHT = 36;
const SLOT_DEPTH = 22;
const SLOT_WIDTH = 2;

/** A strip of card with two slots at the hold width: set on the head edge, it keeps the book at its opening while glue dries. */
export function holderOf(holdWidth: number): Part {
  const left = BEYOND;
  const right = BEYOND + holdWidth;
  const half = SLOT_WIDTH / 2;
  const slot = (x: number): [number, number][] => [
    [x + half, HEIGHT],
    [x + half, HEIGHT - SLOT_DEPTH],
    [x - half, HEIGHT - SLOT_DEPTH],
    [x - half, HEIGHT],
  ];
  return {
    name: "holder",
    material: "card",
    count: 1,
    frame: "own",
    outlines: [[[0, 0], [right + BEYOND, 0], [right + BEYOND, HEIGHT], ...slot(right), ...slot(left), [0, HEIGHT]]],
    scores: [],
    marks: [
      {
        line: [
          [left, 0],
          [left, HEIGHT - SLOT_DEPTH],
        ],
        label: "first picture leaf",
      },
      {
        line: [
          [right, 0],
          [right, HEIGHT - SLOT_DEPTH],
        ],
        label: "last picture leaf",
      },
    ],
    use: "slots over the first and last picture leaf at the head edge",
  };
}
