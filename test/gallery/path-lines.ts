import type { Point } from "../core/geometry/plane.ts";

const COMMAND = /([A-Za-z])([^A-Za-z]*)/g;
const NUMBER = /-?(\d+\.?\d*|\.\d+)/g;
const STEPS = 8;

/** The lines of path data (SVG 2, "Path data") as points; curves of one or two handles as pieces of straight lines. @throws at any other command */
export function linesIn(data: string): Point[][] {
  const lines: Point[][] = [];
  for (const [, command, rest] of data.matchAll(COMMAND)) {
    const values = [...rest!.matchAll(NUMBER)].map(([number]) => Number(number));
    const [x, y] = lines.at(-1)?.at(-1) ?? [0, 0];
    if (command === "M") lines.push([[values[0]!, values[1]!]]);
    else if (command === "m") lines.push([[x + values[0]!, y + values[1]!]]);
    else lines.at(-1)!.push(...next(command!, values, lines.at(-1)!));
  }
  return lines;
}

function next(command: string, values: readonly number[], line: readonly Point[]): Point[] {
  const [x, y] = line.at(-1)!;
  const [a, b] = values as [number, number];
  if (command === "L") return [[a, b]];
  if (command === "l") return steps([x, y], values);
  if (command === "H") return [[a, y]];
  if (command === "V") return [[x, a]];
  if (command === "h") return [[x + a, y]];
  if (command === "v") return [[x, y + a]];
  if (command === "Q" || command === "C") return curve([x, y], values);
  if (command.toLowerCase() === "z") return [line[0]!];
  throw new Error(`no path command ${command}`);
}

/** Points told each from the one before it. */
function steps([x, y]: Point, values: readonly number[]): Point[] {
  let at: Point = [x, y];
  return Array.from({ length: values.length / 2 }, (_, i) => {
    at = [at[0] + values[2 * i]!, at[1] + values[2 * i + 1]!];
    return at;
  });
}

/** Points of a Bézier curve by de Casteljau's construction. */
function curve(from: Point, values: readonly number[]): Point[] {
  const handles: Point[] = [from];
  for (let i = 0; i < values.length; i += 2) handles.push([values[i]!, values[i + 1]!]);
  return Array.from({ length: STEPS }, (_, i) => onCurve(handles, (i + 1) / STEPS));
}

function onCurve(handles: readonly Point[], share: number): Point {
  if (handles.length === 1) return handles[0]!;
  const between = handles.slice(1).map(([x, y], i): Point => {
    const [px, py] = handles[i]!;
    return [px + (x - px) * share, py + (y - py) * share];
  });
  return onCurve(between, share);
}
