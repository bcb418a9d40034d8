import type { Element } from "@xmldom/xmldom";
import type { Point } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { readAttribute, readLength, readSize } from "./attribute.ts";
import { parseNumberList } from "./number-list.ts";
import { parsePathData } from "./path-data.ts";
import type { PathSegment } from "./path-segment.ts";
import { quoted, ValueError } from "./picture-error.ts";
import type { Viewport } from "./view-box.ts";

type ShapeReader = (element: Element, viewport: Viewport) => PathSegment[];

/** Element name → its equivalent path. Source: SVG 2, basic shapes. */
const SHAPES: Readonly<Record<string, ShapeReader>> = {
  path: (element) => readAttribute(element, "d", parsePathData) ?? [],
  rect: readRect,
  circle: readCircle,
  ellipse: readEllipse,
  polygon: readPolygon,
  polyline: (element) => readPolygon(element).slice(0, -1),
  line: readLine,
};

/** Names of the elements that draw a shape. */
export const SHAPE_NAMES: readonly string[] = Object.keys(SHAPES);

/**
 * The path that a shape element stands for, in its own user units.
 *
 * @throws PictureError for a malformed attribute or a negative size
 */
export function readShape(element: Element, viewport: Viewport): PathSegment[] {
  return SHAPES[element.localName!]!(element, viewport);
}

function readRect(element: Element, viewport: Viewport): PathSegment[] {
  const x = readLength(element, "x", viewport.width) ?? 0;
  const y = readLength(element, "y", viewport.height) ?? 0;
  const width = readSize(element, "width", viewport.width) ?? 0;
  const height = readSize(element, "height", viewport.height) ?? 0;
  const givenX = readSize(element, "rx", viewport.width);
  const givenY = readSize(element, "ry", viewport.height);
  // "auto" takes the other radius; each is clamped to half its side afterwards (SVG 2, "The 'rect' element").
  const rx = Math.min(givenX ?? givenY ?? 0, width / 2);
  const ry = Math.min(givenY ?? givenX ?? 0, height / 2);
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0)
    return polygon([
      [x, y],
      [right, y],
      [right, bottom],
      [x, bottom],
    ]);
  const corner = (to: Point): PathSegment => quarter([rx, ry], to);
  const line = (to: Point): PathSegment => ({ kind: "line", to });
  return [
    { kind: "move", to: [x + rx, y] },
    line([right - rx, y]),
    corner([right, y + ry]),
    line([right, bottom - ry]),
    corner([right - rx, bottom]),
    line([x + rx, bottom]),
    corner([x, bottom - ry]),
    line([x, y + ry]),
    corner([x + rx, y]),
    { kind: "close" },
  ];
}

function readCircle(element: Element, viewport: Viewport): PathSegment[] {
  const r = readSize(element, "r", viewport.diagonal) ?? 0;
  return ellipseRound(readCentre(element, viewport), [r, r]);
}

function readEllipse(element: Element, viewport: Viewport): PathSegment[] {
  const rx = readSize(element, "rx", viewport.width);
  const ry = readSize(element, "ry", viewport.height);
  return ellipseRound(readCentre(element, viewport), [rx ?? ry ?? 0, ry ?? rx ?? 0]);
}

function readCentre(element: Element, viewport: Viewport): Point {
  return [readLength(element, "cx", viewport.width) ?? 0, readLength(element, "cy", viewport.height) ?? 0];
}

/** Four quarters from 3 o'clock, clockwise (SVG 2, "The 'ellipse' element"). */
function ellipseRound([cx, cy]: Point, [rx, ry]: Point): PathSegment[] {
  if (rx === 0 || ry === 0) return [];
  const ends: Point[] = [
    [cx, cy + ry],
    [cx - rx, cy],
    [cx, cy - ry],
    [cx + rx, cy],
  ];
  return [{ kind: "move", to: [cx + rx, cy] }, ...ends.map((to) => quarter([rx, ry], to)), { kind: "close" }];
}

function readLine(element: Element, viewport: Viewport): PathSegment[] {
  const end = (x: string, y: string): Point => [
    readLength(element, x, viewport.width) ?? 0,
    readLength(element, y, viewport.height) ?? 0,
  ];
  return [
    { kind: "move", to: end("x1", "y1") },
    { kind: "line", to: end("x2", "y2") },
  ];
}

function readPolygon(element: Element): PathSegment[] {
  const numbers = readAttribute(element, "points", (text) => {
    const list = parseNumberList(text);
    if (list.length % 2 === 1) {
      throw new ValueError((what) => say.pictureOddPoints({ what, value: quoted(text), count: list.length }));
    }
    return list;
  });
  const corners = Array.from(
    { length: (numbers?.length ?? 0) / 2 },
    (_, i): Point => [numbers![2 * i]!, numbers![2 * i + 1]!],
  );
  return corners.length === 0 ? [] : polygon(corners);
}

function polygon(corners: readonly Point[]): PathSegment[] {
  return [...corners.map((to, i): PathSegment => ({ kind: i === 0 ? "move" : "line", to })), { kind: "close" }];
}

function quarter(radii: Point, to: Point): PathSegment {
  return { kind: "arc", radii, turn: 0, large: false, clockwise: true, to };
}
