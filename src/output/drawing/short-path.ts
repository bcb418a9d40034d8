import type { Point } from "../../core/geometry/point.ts";
import { toDecimals } from "../../core/units/length.ts";

/** Path data of upright strips and lines and of outlines in as few letters as SVG 2 allows ("The grammar for path data"). */

/** Path data of a strip from one side to the other, kept to 0.01, and from its top to its foot, kept to 0.1; a fill closes it. */
export function shortStrip(sides: readonly [number, number], from: number, to: number): string {
  const [left, right] = sides[0] < sides[1] ? sides : [sides[1], sides[0]];
  const across = shortNum(right - left, 2);
  const start = pair(shortNum(left, 2), shortNum(from, 1));
  return `M${start}h${across}v${shortNum(toDecimals(to, 1) - toDecimals(from, 1), 1)}h-${across}`;
}

/** An upright line: where it stands, and from where to where it runs. */
export type Upright = readonly [x: number, from: number, to: number];

/** Path data of upright lines for strokes, kept to 0.01 across and to so many decimals along; one at the place of the one before it is told from its end. */
export function shortUprights(lines: readonly Upright[], along = 1): string {
  let atX = "";
  let atY = 0;
  let d = "";
  for (const line of lines) {
    const place = shortNum(line[0], 2);
    const begin = toDecimals(line[1], along);
    const end = toDecimals(line[2], along);
    d += place === atX ? `m${pair("0", shortNum(begin - atY, along))}` : `M${pair(place, shortNum(begin, along))}`;
    d += `v${shortNum(end - begin, along)}`;
    atX = place;
    atY = end;
  }
  return d;
}

/** A level line: from where to where it runs, and where it stands. */
export type Level = readonly [from: number, to: number, y: number];

/** Path data of level lines for strokes, kept to 0.01; one is told from the end of the one before it where that is shorter. */
export function shortLevels(lines: readonly Level[]): string {
  let atX = 0;
  let atY = 0;
  let d = "";
  for (const line of lines) {
    const from = toDecimals(line[0], 2);
    const to = toDecimals(line[1], 2);
    const y = toDecimals(line[2], 2);
    const place = `M${pair(shortNum(from, 2), shortNum(y, 2))}`;
    const step = `m${pair(shortNum(from - atX, 2), shortNum(y - atY, 2))}`;
    d += d !== "" && step.length < place.length ? step : place;
    d += `h${shortNum(to - from, 2)}`;
    atX = to;
    atY = y;
  }
  return d;
}

/** Path data of a line through points, each told from the one before it. */
export function shortLine(points: readonly Point[], decimals: number): string {
  return shortRing(points, decimals).slice(0, -1);
}

/** Path data of closed outlines, each point told from the one before it. Rounding does not add up; what is too small to show is left out. */
export function shortRings(rings: readonly (readonly Point[])[], decimals = 2): string {
  return rings.map((ring) => shortRing(ring, decimals)).join("");
}

/** Path data of one closed outline; what runs level or upright is told by one number. */
export function shortRing(ring: readonly Point[], decimals: number): string {
  const scale = 10 ** decimals;
  const told = (part: number): string => shortNum(part / scale, decimals);
  let start = "";
  let steps = "";
  let command = "";
  let last = "";
  let atX = 0;
  let atY = 0;
  for (const point of ring) {
    const across = Math.round(point[0] * scale) - atX;
    const down = Math.round(point[1] * scale) - atY;
    if (start === "") start = `M${pair(told(across), told(down))}`;
    else if (across === 0 && down === 0) continue;
    else {
      const next = across === 0 ? "v" : down === 0 ? "h" : "l";
      const first = told(next === "v" ? down : across);
      steps += next === "l" && command === "l" ? gap(last, first) : next;
      steps += next === "l" ? pair(first, told(down)) : first;
      command = next;
      last = next === "h" ? first : told(down);
    }
    atX += across;
    atY += down;
  }
  return steps === "" ? "" : `${start}${steps}z`;
}

/** A number without what a reader of path data can do without: `.5`, `-.25`. */
function shortNum(value: number, decimals: number): string {
  const number = String(toDecimals(value, decimals));
  if (number.startsWith("0.")) return number.slice(1);
  return number.startsWith("-0.") ? `-${number.slice(2)}` : number;
}

/** Two numbers in a row. */
function pair(first: string, second: string): string {
  return first + gap(first, second) + second;
}

/** What parts a number from the one before it: nothing where its sign does, or a second point. */
function gap(before: string, number: string): string {
  return number.startsWith("-") || (number.startsWith(".") && before.includes(".")) ? "" : " ";
}
