import { type Box, boxOf } from "../../core/geometry/box.ts";
import { tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import type { PictureNote } from "../svg/svg-picture.ts";
import type { Drawn } from "./drawn.ts";

/** What part of a source is the picture: its canvas, the box of what is drawn, or a rectangle from the canvas's corner. */
export type Crop =
  | "canvas"
  | "drawing"
  | { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** A drawing that takes up less of its canvas, without a word about it, is taken without the rest. */
const LEAST_SHARE = 0.6;

/**
 * A source with its canvas cut to what is the picture. Shapes keep their outlines and may reach out of it.
 *
 * @param at place of the crop in the front matter
 * @throws ProblemError where nothing is drawn in it
 */
export function cropDrawn<D extends Drawn>(drawn: D, crop: Crop | undefined, at: FieldPath): D {
  const canvas: Box = { left: 0, top: 0, right: drawn.width, bottom: drawn.height };
  const whole = boxOf(drawn.shapes.flatMap(({ rings }) => rings));
  if (!(whole.right > whole.left && whole.bottom > whole.top)) {
    throw problem(at.slice(0, -1), {
      given: say.cropNothing(),
      allowed: say.cropSomething(),
      remedy: say.cropDrawSomething(),
    });
  }
  const inside = meet(whole, canvas);
  const small = inside !== undefined && shareOf(inside, canvas) < LEAST_SHARE;
  const box = crop === undefined ? (small ? inside : canvas) : boxFor(crop, canvas, whole);
  if (meet(whole, box) === undefined) {
    const boxes = { drawing: boxText(whole), canvas: boxText(box) };
    throw problem(at, { given: say.cropEmpty(boxes), allowed: say.cropSomething(), remedy: say.cropOther() });
  }
  const notes = crop === undefined && small ? [cropNote(inside, canvas)] : [];
  return box === canvas ? drawn : { ...moved(drawn, box), notes: [...drawn.notes, ...notes] };
}

function boxFor(crop: Crop, canvas: Box, whole: Box): Box {
  if (crop === "canvas") return canvas;
  if (crop === "drawing") return whole;
  return { left: crop.x, top: crop.y, right: crop.x + crop.width, bottom: crop.y + crop.height };
}

function moved<D extends Drawn>(drawn: D, { left, top, right, bottom }: Box): D {
  const shapes = drawn.shapes.map((shape) => ({
    ...shape,
    rings: shape.rings.map((ring) => ring.map(([x, y]) => [x - left, y - top] as const)),
  }));
  return { ...drawn, width: right - left, height: bottom - top, shapes };
}

function cropNote(inside: Box, canvas: Box): PictureNote {
  const percent = Math.max(1, Math.round(100 * shareOf(inside, canvas)));
  return { line: 1, message: say.cropTaken({ drawing: boxText(inside), canvas: boxText(canvas), percent }) };
}

/** Where two boxes overlap; undefined where they do not. */
function meet(a: Box, b: Box): Box | undefined {
  const box = {
    left: Math.max(a.left, b.left),
    top: Math.max(a.top, b.top),
    right: Math.min(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
  };
  return box.right > box.left && box.bottom > box.top ? box : undefined;
}

function shareOf(part: Box, whole: Box): number {
  return (
    ((part.right - part.left) * (part.bottom - part.top)) / ((whole.right - whole.left) * (whole.bottom - whole.top))
  );
}

/** `x 12, y 30, 80 × 60` */
function boxText({ left, top, right, bottom }: Box): string {
  return say.cropBox({
    x: tidy(left, 2),
    y: tidy(top, 2),
    width: tidy(right - left, 2),
    height: tidy(bottom - top, 2),
  });
}
