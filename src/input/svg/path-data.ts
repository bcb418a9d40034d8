import type { Point } from "../../core/geometry/point.ts";
import { toRadians } from "../../core/units/angle.ts";
import { PathScanner } from "./path-scanner.ts";
import type { PathSegment } from "./path-segment.ts";

/**
 * The segments of path data (`d`), all absolute and in full. Empty text and `none` give none.
 * SVG would draw as far as the first fault; a kit made from half an outline is of no use, so a fault is an error.
 *
 * @throws ValueError naming the part at fault and its place
 */
export function parsePathData(text: string): PathSegment[] {
  if (text.trim() === "none") return [];
  const scanner = new PathScanner(text);
  const pen = new Pen();
  while (!scanner.atEnd) {
    if (pen.segments.length === 0 && !scanner.startsWithMove) throw scanner.unexpected("move");
    const letter = scanner.command();
    scanner.rounds(letter).forEach((values, i) => {
      pen.draw(i === 0 ? letter : afterFirst(letter), values);
    });
  }
  return pen.segments;
}

/** Further pairs after a move are lines (SVG 2, paths, "The moveto commands"). */
function afterFirst(letter: string): string {
  if (letter === "M") return "L";
  return letter === "m" ? "l" : letter;
}

class Pen {
  readonly segments: PathSegment[] = [];
  #at: Point = [0, 0];
  #start: Point = [0, 0];

  draw(letter: string, values: readonly number[]): void {
    const kind = letter.toUpperCase();
    const segment = this.#segment(kind, values, letter === kind ? [0, 0] : this.#at);
    this.segments.push(segment);
    if (segment.kind === "move") this.#start = segment.to;
    this.#at = segment.kind === "close" ? this.#start : segment.to;
  }

  /** @param from what the values are relative to */
  #segment(kind: string, values: readonly number[], from: Point): PathSegment {
    const points = pairs(values, from);
    const to = points.at(-1)!;
    switch (kind) {
      case "M":
        return { kind: "move", to };
      case "Z":
        return { kind: "close" };
      case "H":
        return { kind: "line", to: [values[0]! + from[0], this.#at[1]] };
      case "V":
        return { kind: "line", to: [this.#at[0], values[0]! + from[1]] };
      case "L":
        return { kind: "line", to };
      case "A":
        return readArc(values, from);
      default:
        return { kind: "curve", controls: [...this.#smoothControl(kind), ...points.slice(0, -1)], to };
    }
  }

  /** The control point that `S` and `T` leave out: the last one mirrored, if the last curve had the same degree. */
  #smoothControl(kind: string): Point[] {
    if (kind !== "S" && kind !== "T") return [];
    const last = this.segments.at(-1);
    if (last?.kind !== "curve" || last.controls.length !== (kind === "S" ? 2 : 1)) return [this.#at];
    const control = last.controls.at(-1)!;
    return [[2 * this.#at[0] - control[0], 2 * this.#at[1] - control[1]]];
  }
}

/** A radius counts without its sign (SVG 2, "Out-of-range elliptical arc parameters"). */
function readArc([rx, ry, degrees, large, sweep, x, y]: readonly number[], from: Point): PathSegment {
  return {
    kind: "arc",
    radii: [Math.abs(rx!), Math.abs(ry!)],
    turn: toRadians(degrees!),
    large: large === 1,
    clockwise: sweep === 1,
    to: [x! + from[0], y! + from[1]],
  };
}

/** Values two by two as points; one left over is no point. */
function pairs(values: readonly number[], [x, y]: Point): Point[] {
  const count = Math.floor(values.length / 2);
  return Array.from({ length: count }, (_, i): Point => [values[2 * i]! + x, values[2 * i + 1]! + y]);
}
