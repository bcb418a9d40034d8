import type { Point } from "../../../core/geometry/point.ts";
import { extentOf } from "../../../core/packing/pack.ts";
import type { Part } from "../../../core/window/part.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import type { Figure } from "../figure.ts";
import { lookedAt } from "../looked-at.ts";
import { MATERIAL } from "../material-tints.ts";
import { tag } from "../svg-text.ts";
import { linesWithin } from "../words-width.ts";
import { type At, diagram, SCORE, TEXT, THIN, WIDTH } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";
import { LINE } from "./pen-words.ts";

/** Layers are drawn half as wide as they are and slanted, each in its third of the figure. */
const NARROWER = 0.5;
const SLANT = 0.16;
const STRIDE = WIDTH / 3;

/** Free room between two layers, and the most that they are high. */
const FREE = 5;
const MOST_HEIGHT = 46;

/** How the window goes together, from the book to the viewer: layers drawn apart along a slanted line, each named. */
export function windowLayers({ frame, glazing, door }: BookWindow): Figure {
  const order = [frame, glazing, door];
  const boxes = order.map(extentOf);
  const width = Math.max(...boxes.map((box) => box.right - box.left));
  const height = Math.max(...boxes.map((box) => box.bottom - box.top)) + SLANT * width;
  const scale = Math.min((STRIDE - FREE) / (NARROWER * width), MOST_HEIGHT / height);
  const foot = 6 + height * scale;
  const pen = penFor("ltr");
  const names = order.map(partName);
  const lines = Math.max(...names.map((name) => linesWithin(STRIDE, name, TEXT).length));
  const line = foot + 6.4 + lines * LINE * TEXT;
  const middle = (i: number): number => (i + 0.5) * STRIDE;
  const label = say.drawLayers({ frame: names[0]!, glazing: names[1]!, door: names[2]! });
  return diagram(line + 2.4, label, [
    ...order.flatMap((part, i) => [
      layer(pen, part, [middle(i), 6 + (height * scale) / 2], scale),
      pen.turn([middle(i), 2.4], i + 1),
      pen.wrapped([middle(i), foot + 4.4], names[i]!, STRIDE, { anchor: "middle" }),
    ]),
    pen.words([0, line + 1], say.drawLayersBook()),
    pen.arrow(middle(0), line, middle(2), line),
    pen.words([WIDTH, line + 1], say.drawLayersYou(), { anchor: "end" }),
  ]);
}

/** A part slanted away about a place. */
function layer(pen: Pen, part: Part, [at, level]: At, scale: number): string {
  const box = extentOf(part);
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const place = ([px, py]: Point): At => [
    at + (px - x) * NARROWER * scale,
    level + (py - y + (px - x) * SLANT) * scale,
  ];
  const outline = lookedAt(part.outlines.map((ring) => ring.map(place)));
  return [
    tag("path", { d: outline, ...THIN, fill: MATERIAL[part.material], "fill-rule": "evenodd" }),
    ...part.scores.map((line) => pen.line(line.map(place), SCORE)),
  ].join("");
}
