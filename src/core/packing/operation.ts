import type { Area } from "../geometry/area.ts";
import { signedArea } from "../geometry/area.ts";
import type { Size } from "../geometry/box.ts";
import type { Point, Ring } from "../geometry/point.ts";
import type { Part } from "../window/part.ts";

/** What a tool does along a line. The names are the layers of every cut file. */
export type Operation = "through-cut" | "press-score" | "pencil-mark" | "measure-check";

export const OPERATIONS: readonly Operation[] = ["through-cut", "press-score", "pencil-mark", "measure-check"];

/** A line of one operation, mm, y down. */
export interface ToolPath {
  readonly operation: Operation;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** A drawing for a cutter: a field of a size, and its lines in the order of work. */
export interface CutDrawing {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly paths: readonly ToolPath[];
  /** What it was made from: kit, revision, settings. */
  readonly about: string;
}

/** The reference rectangle of a cut file, mm: measure it before cutting. */
export const REFERENCE = { width: 50, height: 20 } as const;

/** A part's lines moved to a place, turned by a quarter where wished: scores and marks first, inner outlines before outer ones. */
export function toolPaths(part: Part, place: (point: Point) => Point): ToolPath[] {
  const lines = [
    ...part.scores.map((points) => ({ operation: "press-score" as const, points })),
    ...part.marks.map((mark) => ({ operation: "pencil-mark" as const, points: mark.line })),
  ];
  return [
    ...lines.map((line): ToolPath => ({ operation: line.operation, points: line.points.map(place), closed: false })),
    ...innerFirst(part.outlines).map(
      (ring): ToolPath => ({ operation: "through-cut", points: ring.map(place), closed: true }),
    ),
  ];
}

/** The points of a path as a pen goes: back to the first where it is closed. */
export function drawnLine({ points, closed }: ToolPath): readonly Point[] {
  return closed ? [...points, points[0]!] : points;
}

/** Closed outline of a rectangle to measure at a corner, the reference rectangle where no size is given. */
export function referencePath(left: number, top: number, { width, height }: Size = REFERENCE): ToolPath {
  const points: Ring = [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
  return { operation: "measure-check", points, closed: true };
}

/** Smaller outlines lie inside larger ones or beside them, never around them. */
function innerFirst(area: Area): Area {
  return area.toSorted((a, b) => Math.abs(signedArea(a)) - Math.abs(signedArea(b)));
}
