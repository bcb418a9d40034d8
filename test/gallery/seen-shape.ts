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

/** Upright strokes as wide as this are fields that words may stand on: wider than any line, in millimetres of a sheet. */
const FIELD = 1.5;

/** The lines of an element that is no text. */
export function shapeOf(one: Element, place: number): Shape {
  const name = one.getAttribute("class") ?? "";
  const stroke = one.getAttribute("stroke") ?? (name.startsWith("edge-") && name !== "edge-flap" ? name : "none");
  const fill = one.getAttribute("fill") ?? (one.tagName === "svg" ? "none" : "black");
  const lines = moved(outlineOf(one), one.getAttribute("transform") ?? "");
  const width = number(one, "stroke-width");
  const shape = { name: one.tagName, place };
  if (stroke !== "none" && fill === "none" && width >= FIELD && lines.every(isUpright)) {
    const fields = lines.map((line) => fieldOf(line, width));
    return { ...shape, lines: fields, bounds: boundsOf(fields.flat()), stroked: false, filled: true };
  }
  return { ...shape, lines, bounds: boundsOf(lines.flat()), stroked: stroke !== "none", filled: fill !== "none" };
}

function isUpright(line: readonly Point[]): boolean {
  return line.length === 2 && line[0]![0] === line[1]![0];
}

/** What a wide upright stroke covers. */
function fieldOf(line: readonly Point[], width: number): Point[] {
  const [left, top, right, bottom] = boundsOf(line);
  return [
    [left - width / 2, top],
    [right + width / 2, top],
    [right + width / 2, bottom],
    [left - width / 2, bottom],
    [left - width / 2, top],
  ];
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
