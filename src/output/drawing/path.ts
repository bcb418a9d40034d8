import type { Point } from "../../core/geometry/point.ts";
import { num } from "./svg-text.ts";

/** Path data (SVG 2, "Path data") of a line through points. */
export function linePath(points: readonly Point[], decimals = 2): string {
  return `M${points.map((point) => pathPoint(point, decimals)).join("L")}`;
}

/** Path data of a closed outline. */
export function ringPath(points: readonly Point[], decimals = 2): string {
  return `${linePath(points, decimals)}Z`;
}

/** Path data of several closed outlines. */
export function ringsPath(rings: readonly (readonly Point[])[], decimals = 2): string {
  return rings.map((ring) => ringPath(ring, decimals)).join("");
}

/** Path data of a level line that begins at a point. */
export function levelPath(from: Point, length: number, decimals = 2): string {
  return `M${pathPoint(from, decimals)}h${num(length, decimals)}`;
}

/** Path data of an upright line that begins at a point. */
export function uprightPath(from: Point, length: number, decimals = 2): string {
  return `M${pathPoint(from, decimals)}v${num(length, decimals)}`;
}

/** Path data of an upright rectangle from its upper left corner. */
export function boxPath(x: number, y: number, width: number, height: number, decimals = 2): string {
  return `${levelPath([x, y], width, decimals)}v${num(height, decimals)}h${num(-width, decimals)}z`;
}

/** A place as path data writes it: `12.5 3`. */
export function pathPoint([x, y]: Point, decimals = 2): string {
  return `${num(x, decimals)} ${num(y, decimals)}`;
}
