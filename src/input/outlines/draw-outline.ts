import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { FieldPath } from "../files/problem.ts";
import type { Drawn } from "../picture/drawn.ts";
import { arch } from "./arch.ts";
import { border } from "./border.ts";
import { ground } from "./ground.ts";
import { HEART_SHAPE, heart } from "./heart.ts";
import { moon } from "./moon.ts";
import { oval, ring } from "./oval.ts";
import { rectangle } from "./rectangle.ts";
import type { FieldsOf, OutlineFields, OutlineName } from "./schema.ts";
import { star, starShape } from "./star.ts";

/** The outlines of a figure that fills a canvas of this size, mm; `at` is the figure's field. @throws ProblemError where its numbers have no room */
type Draw<Name extends OutlineName> = (fields: FieldsOf<Name>, size: Size, at: FieldPath) => readonly Ring[];

const DRAW: { readonly [Name in OutlineName]: Draw<Name> } = {
  ring,
  oval: (_, size) => oval(size),
  arch,
  heart: (_, size) => heart(size),
  star,
  moon,
  rectangle,
  ground,
  border,
};

/** The shape that an outline has by itself, in any unit: that of its box where it has none. */
export function outlineShape(name: OutlineName, fields: OutlineFields, box: Size): Size {
  switch (name) {
    case "ring":
    case "moon":
      return { width: 1, height: 1 };
    case "heart":
      return HEART_SHAPE;
    case "star":
      return starShape(fields.star!);
    default:
      return box;
  }
}

/** An outline on a canvas of its size, mm, at one level. @throws ProblemError where its numbers have no room */
export function drawOutline(
  name: OutlineName,
  fields: OutlineFields,
  { size, level, at }: { readonly size: Size; readonly level: number; readonly at: FieldPath },
): Drawn {
  const draw = DRAW[name] as Draw<OutlineName>;
  const rings = draw(fields[name] as FieldsOf<OutlineName>, size, [...at, name]);
  return { ...size, shapes: [{ level, rule: "evenodd", rings }], notes: [] };
}
