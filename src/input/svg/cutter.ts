import type { Element } from "@xmldom/xmldom";
import { inverse, mapPoint } from "../../core/geometry/affine.ts";
import type { Area } from "../../core/geometry/area.ts";
import { type Box, boxOf } from "../../core/geometry/box.ts";
import * as say from "../../words/messages.ts";
import { CutAreas, type Cutting, type Reading } from "./cut-areas.ts";
import { cutTarget } from "./cut-target.ts";
import type { Scope } from "./scope.ts";
import type { PaintedShape } from "./svg-picture.ts";

/** Cuts shapes to clip paths and masks. */
export class Cutter {
  readonly #reading: Reading;
  readonly #cuts: CutAreas;

  constructor(reading: Reading) {
    this.#reading = reading;
    this.#cuts = new CutAreas(reading);
  }

  /** Cuts what an element has added since the first `before` shapes. @throws PictureError for what cannot be followed */
  cut(element: Element, scope: Scope, before: number): void {
    const { gathered, byId, report } = this.#reading;
    if (gathered.shapes.length === before) return;
    const { style } = scope;
    const value = style.mask === "none" ? style["mask-image"] : style.mask;
    if (style["clip-path"] === "none" && value === "none") return;
    const shapes = gathered.shapes.slice(before);
    const cutting: Cutting = { scope, box: () => boxIn(scope, shapes) };
    const clip = cutTarget(element, { name: "clip-path", value: style["clip-path"] }, scope, byId, report);
    if (clip) this.#apply(this.#cuts.clipArea(clip, cutting), before);
    const mask = cutTarget(element, { name: "mask", value }, scope, byId, report);
    if (mask) this.#apply(this.#cuts.maskArea(mask, cutting), before);
  }

  #apply(area: Area, before: number): void {
    const { gathered, areas, report } = this.#reading;
    gathered.replaceSince(before, (shape) => {
      gathered.count(shape.line, shape.rings);
      const { rings, rule } = areas.cut(shape, area, shape.line);
      if (rings.length > 0) return rings === shape.rings ? shape : { ...shape, rings, rule };
      report.note(shape.line, say.pictureCutAway({ name: shape.element }));
      return undefined;
    });
  }
}

/** The box of shapes in the user space of what they belong to; strokes only count where there is no fill. */
function boxIn(scope: Scope, shapes: readonly PaintedShape[]): Box {
  const fills = shapes.filter(({ paint }) => paint === "fill");
  const back = inverse(scope.map);
  const counted = fills.length > 0 ? fills : shapes;
  return boxOf(counted.flatMap(({ rings }) => rings.map((ring) => ring.map((point) => mapPoint(back, point)))));
}
