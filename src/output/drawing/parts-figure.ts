import { extentOf } from "../../core/packing/pack.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { Part } from "../../core/window/part.ts";
import type { BookWindow } from "../../core/window/window.ts";
import * as say from "../../words/messages.ts";
import { partName, partUse } from "../../words/parts.ts";
import { type Figure, figureOf } from "./figure.ts";
import { partDrawing } from "./part-drawing.ts";
import { levelPath } from "./path.ts";
import { tag, text } from "./svg-text.ts";

/** Tints by material; parts are told apart by their names. */
const FILL: Readonly<Record<Part["material"], string>> = { card: "#f1e8d5", acetate: "#e3eff0", paper: "#ffffff" };

/** Free room round a part, mm. */
const PAD = 3;

/** One part of a window in a small figure of its own. */
export function partFigure(part: Part, window: BookWindow, units: UnitSystem): Figure {
  const box = extentOf(part);
  const field = {
    left: box.left - PAD,
    top: box.top - PAD,
    width: box.right - box.left + 2 * PAD,
    height: box.bottom - box.top + 2 * PAD,
  };
  const label = say.drawPart({ part: partName(part), use: partUse(part, window, units) });
  const look = { thin: 1.6, labels: false, fill: FILL[part.material] };
  return figureOf(
    field,
    label,
    partDrawing(part, (point) => point, look),
  );
}

/** Layers lie this share of their width apart, drawn half as wide as they are and slanted. */
const STRIDE = 0.62;
const NARROWER = 0.5;
const SLANT = 0.16;

/** How the window goes together, from the book to the viewer: layers drawn apart along a slanted line, each named. */
export function windowLayers({ frame, glazing, door }: BookWindow): Figure {
  const order = [frame, glazing, door];
  const boxes = order.map(extentOf);
  const width = Math.max(...boxes.map((box) => box.right - box.left));
  const height = Math.max(...boxes.map((box) => box.bottom - box.top));
  const foot = height / 2;
  const stride = width * STRIDE;
  const [left, right] = [-width * 0.3, 2 * stride + width * 0.3];
  const label = say.drawLayers({ frame: partName(frame), glazing: partName(glazing), door: partName(door) });
  const small = { "font-size": 7, fill: "#000" };
  const drawing = [
    ...order.map((part, i) => layer(part, i * stride)),
    ...order.map((part, i) =>
      text(i * stride, foot + 16, say.drawLayer({ number: i + 1, part: partName(part) }), {
        "font-size": 8,
        "text-anchor": "middle",
        fill: "#000",
      }),
    ),
    tag("path", {
      d: levelPath([left, foot + 24], right - left),
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.4,
    }),
    text(left, foot + 32, say.drawLayersBook(), small),
    text(right, foot + 32, say.drawLayersYou(), { ...small, "text-anchor": "end" }),
  ].join("");
  const field = { left: -width * 0.36, top: -foot - 14, width: 2 * stride + width * 0.72, height: height + 52 };
  return figureOf(field, label, drawing);
}

/** A part slanted away, its middle at x. */
function layer(part: Part, at: number): string {
  const box = extentOf(part);
  const [middle, level] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  return partDrawing(part, ([x, y]) => [at + (x - middle) * NARROWER, y - level + (x - middle) * SLANT], {
    thin: 1.8,
    labels: false,
    fill: FILL[part.material],
  });
}
