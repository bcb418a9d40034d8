import type { Element } from "@xmldom/xmldom";
import type { Point } from "../core/geometry/plane.ts";
import { linesIn } from "./path-lines.ts";

/** Lines of one element. */
export interface Shape {
  readonly name: string;
  readonly lines: readonly (readonly Point[])[];
  readonly bounds: Bounds;
  readonly stroked: boolean;
  readonly filled: boolean;
  readonly place: number;
}

export type Bounds = readonly [left: number, top: number, right: number, bottom: number];

/** The lines of an element that is no text. */
export function shapeOf(one: Element, place: number): Shape {
  const name = one.getAttribute("class") ?? "";
  const stroke = one.getAttribute("stroke") ?? (name.startsWith("edge-") && name !== "edge-flap" ? name : "none");
  const fill = one.getAttribute("fill") ?? (one.tagName === "svg" ? "none" : "black");
  const lines = moved(outlineOf(one), one.getAttribute("transform") ?? "");
  return {
    name: one.tagName,
    lines,
    bounds: boundsOf(lines.flat()),
    stroked: stroke !== "none",
    filled: fill !== "none",
    place,
  };
}

/** `translate(x y) scale(a b)`, or nothing. */
function moved(lines: readonly (readonly Point[])[], transform: string): (readonly Point[])[] {
  const [, x = "0", y = "0", a = "1", b = "1"] = /^(?:translate\((\S+) (\S+)\) scale\((\S+) (\S+)\))?$/.exec(
    transform,
  )!;
  return lines.map((line) => line.map(([px, py]) => [Number(x) + px * Number(a), Number(y) + py * Number(b)] as const));
}

/** The box round points. */
export function boundsOf(points: readonly Point[]): Bounds {
  let [left, top, right, bottom] = [1e9, 1e9, -1e9, -1e9];
  for (const [x, y] of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return [left, top, right, bottom];
}

function outlineOf(one: Element): (readonly Point[])[] {
  if (one.tagName === "path") return linesIn(one.getAttribute("d")!);
  if (one.tagName === "line")
    return [
      [
        [number(one, "x1"), number(one, "y1")],
        [number(one, "x2"), number(one, "y2")],
      ],
    ];
  if (one.tagName === "circle") {
    const [cx, cy, r] = [number(one, "cx"), number(one, "cy"), number(one, "r")];
    return [
      Array.from(
        { length: 25 },
        (_, i): Point => [cx + r * Math.cos((Math.PI * i) / 12), cy + r * Math.sin((Math.PI * i) / 12)],
      ),
    ];
  }
  const [x, y, width, height] = [number(one, "x"), number(one, "y"), number(one, "width"), number(one, "height")];
  return [
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
      [x, y],
    ],
  ];
}

/** An attribute as a number, 0 where it is not stated. */
export function number(one: Element, name: string): number {
  return Number(one.getAttribute(name) ?? 0);
}
