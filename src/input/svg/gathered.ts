import * as say from "../../words/messages.ts";
import { MOST_POINTS } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";
import type { PaintedShape } from "./svg-picture.ts";

/** The shapes that are found while a picture is read, in painter order, and how many points they have. */
export class Gathered {
  #shapes: PaintedShape[] = [];
  #points = 0;

  get shapes(): readonly PaintedShape[] {
    return this.#shapes;
  }

  /** @throws PictureLimit where all points are too many */
  add(shape: PaintedShape): void {
    this.count(shape.line, shape.rings);
    this.#shapes.push(shape);
  }

  /** Puts another in the place of each shape since the first `before`, or none. */
  replaceSince(before: number, replace: (shape: PaintedShape) => PaintedShape | undefined): void {
    const replaced = this.#shapes.slice(before).flatMap((shape) => replace(shape) ?? []);
    this.#shapes.length = before;
    for (const shape of replaced) this.#shapes.push(shape);
  }

  /** What a step adds, taken apart from all others. */
  apart(step: () => void): readonly PaintedShape[] {
    const outside = this.#shapes;
    this.#shapes = [];
    try {
      step();
      return this.#shapes;
    } finally {
      this.#shapes = outside;
    }
  }

  /** A point counts each time that it is looked at. @throws PictureLimit */
  count(line: number, rings: PaintedShape["rings"], times = 1): void {
    this.#points += times * rings.reduce((sum, ring) => sum + ring.length, 0);
    if (this.#points > MOST_POINTS) throw new PictureLimit(line, say.pictureManyPoints({ most: MOST_POINTS }));
  }
}
