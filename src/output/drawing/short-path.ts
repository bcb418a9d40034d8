import type { Point } from "../../core/geometry/point.ts";
import { toDecimals } from "../../core/units/length.ts";

/** Path data of upright strips and lines and of outlines in as few letters as SVG 2 allows ("The grammar for path data"). */

/** Path data of a strip from one side to the other, kept to 0.01, and from its top to its foot, kept to 0.1; a fill closes it. */
export function shortStrip(sides: readonly [number, number], from: number, to: number): string {
  const [left, right] = sides[0] < sides[1] ? sides : [sides[1], sides[0]];
  const across = shortNum(right - left, 2);
  const start = joined([shortNum(left, 2), shortNum(from, 1)]);
  return `M${start}h${across}v${shortNum(toDecimals(to, 1) - toDecimals(from, 1), 1)}h-${across}`;
}

/** An upright line: where it stands, and from where to where it runs. */
export type Upright = readonly [x: number, from: number, to: number];

/** Path data of upright lines for strokes, kept to 0.01 across and to so many decimals along; one at the place of the one before it is told from its end. */
export function shortUprights(lines: readonly Upright[], along = 1): string {
  let [atX, atY] = ["", 0];
  let d = "";
  for (const [x, from, to] of lines) {
    const place = shortNum(x, 2);
    const [begin, end] = [toDecimals(from, along), toDecimals(to, along)];
    d +=
      place === atX ? `m${joined(["0", shortNum(begin - atY, along)])}` : `M${joined([place, shortNum(begin, along)])}`;
    d += `v${shortNum(end - begin, along)}`;
    [atX, atY] = [place, end];
  }
  return d;
}

/** A level line: from where to where it runs, and where it stands. */
export type Level = readonly [from: number, to: number, y: number];

/** Path data of level lines for strokes, kept to 0.01; one is told from the end of the one before it where that is shorter. */
export function shortLevels(lines: readonly Level[]): string {
  let [atX, atY] = [0, 0];
  let d = "";
  for (const line of lines) {
    const [from, to, y] = line.map((part) => toDecimals(part, 2)) as [number, number, number];
    const place = `M${joined([shortNum(from, 2), shortNum(y, 2)])}`;
    const step = `m${joined([shortNum(from - atX, 2), shortNum(y - atY, 2)])}`;
    d += d !== "" && step.length < place.length ? step : place;
    d += `h${shortNum(to - from, 2)}`;
    [atX, atY] = [to, y];
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
  let [steps, command, last] = ["", "", ""];
  const [first, ...rest] = ring.map(([x, y]) => [Math.round(x * scale), Math.round(y * scale)] as const);
  if (!first) return "";
  let [atX, atY] = first;
  for (const [x, y] of rest) {
    const [across, down] = [x - atX, y - atY];
    if (across === 0 && down === 0) continue;
    const next = across === 0 ? "v" : down === 0 ? "h" : "l";
    const told = [across, down].filter((part) => part !== 0).map((part) => shortNum(part / scale, decimals));
    steps += next === "l" && command === "l" ? gap(last, told[0]!) : next;
    steps += joined(told);
    [command, last, atX, atY] = [next, told.at(-1)!, x, y];
  }
  const start = joined(first.map((part) => shortNum(part / scale, decimals)));
  return steps === "" ? "" : `M${start}${steps}z`;
}

/** A number without what a reader of path data can do without: `.5`, `-.25`. */
function shortNum(value: number, decimals: number): string {
  return String(toDecimals(value, decimals)).replace(/^(-?)0\./, "$1.");
}

/** Numbers in a row. */
function joined(numbers: readonly string[]): string {
  return numbers.map((number, i) => (i === 0 ? number : gap(numbers[i - 1]!, number) + number)).join("");
}

/** What parts a number from the one before it: nothing where its sign does, or a second point. */
function gap(before: string, number: string): string {
  return number.startsWith("-") || (number.startsWith(".") && before.includes(".")) ? "" : " ";
}
