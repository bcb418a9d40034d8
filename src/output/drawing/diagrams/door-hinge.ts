import { boxOf } from "../../../core/geometry/box.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Part } from "../../../core/window/part.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import type { Figure } from "../figure.ts";
import { ACETATE, CARD, diagram, GLUE, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

/** Distances from the hinge toward the middle of the door, mm. */
interface Hinge {
  readonly flap: number;
  readonly glazing: number;
  /** How far the base frame goes on beyond the hinge. */
  readonly bulge: number;
}

const X = 14;
const END = 62;
const THICK = 1.4;
const SCALE = 1.6;

/** The hinge edge-on: the flap folded under the door and glued on the base frame; door closed and open. Undefined without a window. */
export function doorHinge(kit: Kit, { window }: Pattern): Figure | undefined {
  if (!window) return undefined;
  const side = window.wish.hinge;
  const hinge = hingeOf(window);
  const flap = formatSize(hinge.flap, kit.units);
  const pen = penFor(side === "left" ? "ltr" : "rtl");
  return diagram(73, say.drawHinge({ side, flap }), [closed(pen, window, hinge, flap), open(pen, hinge)]);
}

function hingeOf({ wish, frame, glazing, door }: BookWindow): Hinge {
  const x = door.scores[0]![0]![0];
  const inward = (part: Part): number => {
    const box = boxOf(part.outlines);
    return wish.hinge === "left" ? box.left - x : x - box.right;
  };
  return { flap: -inward(door), glazing: inward(glazing), bulge: Math.max(0, -inward(frame)) };
}

const CLOSED = { tips: 7, frame: 13, glue: 14.4, flap: 15.4, glazing: 18.8, door: 20.4 };

function closed(pen: Pen, window: BookWindow, hinge: Hinge, flap: string): string {
  const x = (mm: number): number => X + mm * SCALE;
  const { frame, glue, flap: flapY, glazing, door } = CLOSED;
  return [
    pen.words([1, 4], say.drawHingeClosed(), { bold: true, size: 3.3 }),
    base(pen, hinge, CLOSED.tips, frame),
    pen.box([x(1.5), glue], [x(hinge.flap - 1.5), flapY], GLUE, THIN),
    pen.box([X, flapY], [x(hinge.flap), flapY + THICK], CARD, THIN),
    pen.box([X, door], [END, door + THICK], CARD, THIN),
    pen.box([x(hinge.glazing), glazing], [END, door], ACETATE, THIN),
    foldedBack(pen, flapY, door),
    pen.turn([X - 5, 18.6], 1),
    pen.turn([x(hinge.flap) + 13, glazing - 2.2], 2),
    pen.across(X, x(hinge.flap), 28, say.drawHingeFlap({ width: flap }), { from: door + THICK }),
    pen.words([END + 2, 10.6], say.drawHingeTips()),
    pen.words([END + 2, frame + 1.8], partName(window.frame)),
    pen.words([END + 2, 19.4], partName(window.glazing)),
    pen.words([END + 2, 23.2], partName(window.door)),
    pen.words([x(hinge.flap) + 3, glazing - 1.3], say.drawGlue()),
    pen.leader([
      [x(hinge.flap) + 2.4, glazing - 2.2],
      [x(hinge.flap) + 1, glue + 0.5],
      [x(hinge.flap) - 3, glue + 0.5],
    ]),
  ].join("");
}

/** The card where it is folded back from the door to the flap. */
function foldedBack(pen: Pen, flap: number, door: number): string {
  return pen.shape(
    [
      [X, flap],
      [X - 1.5, flap + 1],
      [X - 1.5, door + 0.4],
      [X, door + THICK],
      [X, door],
      [X - 0.4, door - 0.6],
      [X - 0.4, flap + THICK + 0.6],
      [X, flap + THICK],
    ],
    CARD,
    THIN,
  );
}

/** The book's front tips and the base frame glued on them. */
function base(pen: Pen, hinge: Hinge, tips: number, frame: number): string {
  const left = X - hinge.bulge * SCALE;
  const lines = Array.from({ length: 24 }, (_, i) => left + 1 + i * 2).filter((at) => at < END);
  return (
    lines.map((at) => pen.segment(at, tips, at, frame - 0.1, THIN)).join("") +
    pen.box([left, frame], [END, frame + THICK], CARD, THIN)
  );
}

const OPEN = { tips: 38, frame: 44, glue: 45.4, flap: 46.4 };

function open(pen: Pen, hinge: Hinge): string {
  const x = (mm: number): number => X + mm * SCALE;
  const length = 24;
  const angle = 1.9;
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  const corner = [X - 1, OPEN.flap + THICK / 2] as const;
  const at = (along: number, aside: number): readonly [number, number] => [
    corner[0] + along * dx - aside * dy,
    corner[1] + along * dy + aside * dx,
  ];
  return [
    pen.words([1, 36], say.drawHingeOpen(), { bold: true, size: 3.3 }),
    base(pen, hinge, OPEN.tips, OPEN.frame),
    pen.box([x(1.5), OPEN.glue], [x(hinge.flap - 1.5), OPEN.flap], GLUE, THIN),
    pen.box([X - 1, OPEN.flap], [x(hinge.flap), OPEN.flap + THICK], CARD, THIN),
    pen.shape([at(0, -THICK / 2), at(length, -THICK / 2), at(length, THICK / 2), at(0, THICK / 2)], CARD, THIN),
    pen.shape(
      [at(3, -THICK / 2), at(length, -THICK / 2), at(length, -THICK / 2 - 1.2), at(3, -THICK / 2 - 1.2)],
      ACETATE,
      THIN,
    ),
    pen.arrow(X + 26, 52, X + 6, 64, [X + 24, 64]),
    pen.words([X + 28, 60], say.drawHingeMoves()),
    pen.words([END + 2, OPEN.flap + 1.2], say.drawHingeStays()),
  ].join("");
}
