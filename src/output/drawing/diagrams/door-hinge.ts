import { boxOf } from "../../../core/geometry/area.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Insert } from "../../../core/window/insert.ts";
import { formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
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
export function doorHinge(kit: Kit, pattern: Pattern): Figure | undefined {
  const { insert } = pattern;
  if (!insert) return undefined;
  const hinge = hingeOf(insert);
  const flap = formatSize(hinge.flap, kit.units);
  const label = `The hinge at the ${insert.wish.hinge}, edge-on from the head, the viewer below. The flap, ${flap} wide, is folded back under the door along the score line and glued to the face of the base frame, which is glued on the book's front tips; the glazing is glued behind the door. First closed, then open: only the door moves. Thickness is exaggerated.`;
  const pen = penFor(insert.wish.hinge === "left" ? "ltr" : "rtl");
  return diagram(73, label, [closed(pen, hinge, flap), open(pen, hinge)]);
}

function hingeOf(insert: Insert): Hinge {
  const box = (name: string): ReturnType<typeof boxOf> =>
    boxOf(insert.parts.find((part) => part.name === name)!.outlines);
  const x = insert.parts.find((part) => part.name === "door")!.scores[0]![0]![0];
  const left = insert.wish.hinge === "left";
  const inward = (name: string): number => (left ? box(name).left - x : x - box(name).right);
  return { flap: -inward("door"), glazing: inward("glazing"), bulge: Math.max(0, -inward("base frame")) };
}

const CLOSED = { tips: 7, frame: 13, glue: 14.4, flap: 15.4, glazing: 18.8, door: 20.4 };

function closed(pen: Pen, hinge: Hinge, flap: string): string {
  const x = (mm: number): number => X + mm * SCALE;
  const { frame, glue, flap: flapY, glazing, door } = CLOSED;
  return [
    pen.words([1, 4], "closed", { bold: true, size: 3.3 }),
    base(pen, hinge, CLOSED.tips, frame),
    pen.box([x(1.5), glue], [x(hinge.flap - 1.5), flapY], GLUE, THIN),
    pen.box([X, flapY], [x(hinge.flap), flapY + THICK], CARD, THIN),
    pen.box([X, door], [END, door + THICK], CARD, THIN),
    pen.box([x(hinge.glazing), glazing], [END, door], ACETATE, THIN),
    pen.shape(
      [
        [X, flapY],
        [X - 1.5, flapY + 1],
        [X - 1.5, door + 0.4],
        [X, door + THICK],
        [X, door],
        [X - 0.4, door - 0.6],
        [X - 0.4, flapY + THICK + 0.6],
        [X, flapY + THICK],
      ],
      CARD,
      THIN,
    ),
    pen.across(X, x(hinge.flap), 28, `flap ${flap}`, { from: door + THICK }),
    ...names(pen, [
      ["front tips", 9.6],
      ["base frame", frame + 0.8],
      ["glazing", 18.4],
      ["door", 22.2],
    ]),
    pen.words([x(hinge.flap) + 8, 30.6], "glue"),
    pen.leader([
      [x(hinge.flap) + 8, 29],
      [x(hinge.flap) - 3, glue + 0.5],
    ]),
  ].join("");
}

function names(pen: Pen, all: readonly (readonly [string, number])[]): string[] {
  return all.map(([words, y]) => pen.words([END + 2, y + 1], words));
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
    pen.words([1, 36], "open", { bold: true, size: 3.3 }),
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
    pen.words([X + 28, 60], "only the door moves"),
    pen.words([END + 2, OPEN.flap + 1.2], "flap stays"),
  ].join("");
}
