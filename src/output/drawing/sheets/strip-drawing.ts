import { toDecimals } from "../../../core/units/length.ts";
import { lineLook } from "../line-kinds.ts";
import { boxPath, uprightPath } from "../path.ts";
import { type Level, shortLevels, shortLine, shortUprights, type Upright } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { FOLD, STRIP, type Strip, type StripField, type StripPart, TAB, TITLE } from "./strip.ts";
import { stripWords } from "./strip-words.ts";

/** Width of a notch's field, mm. */
const NOTCH = 1.6;

/**
 * Strips beside each other: fields, the outlines to cut out, the line at which tabs are folded, marks and notches, and above
 * them the words. What looks alike is written once for all of them.
 */
export function drawStrips(strips: readonly Strip[], part: StripPart): string {
  const [left, right] = [strips[0]!.x, strips.at(-1)!.x + STRIP];
  const height = part.to - part.from;
  const marks = levels(strips, (strip) => strip.marks.map(({ y }) => y));
  return [
    fieldsOf(strips, height),
    stroke(outlines(strips, TAB + height), line(0.13)),
    stroke(shortLevels([[left, right, FOLD]]), lineLook(part.from === 0 ? "score" : "edge")),
    stroke(slants(strips), { ...line(0.25), "stroke-dasharray": "1.2 0.6" }),
    stroke(shortLevels(marks), line(0.25)),
    notches(strips),
    stripWords(strips),
  ].join("");
}

type Look = Readonly<Record<string, string | number>>;

function line(width: number, colour = "#000"): Look {
  return { fill: "none", stroke: colour, "stroke-width": width };
}

function stroke(d: string, look: Look): string {
  return d === "" ? "" : tag("path", { d, ...look });
}

/** Fields as strokes as wide as a strip. Where they cover the strips, the tone of most of them is one ground below the others. */
function fieldsOf(strips: readonly Strip[], height: number): string {
  const tones = Map.groupBy(
    strips.flatMap(({ x, fields }) => fields.map((field) => ({ ...field, x: x + STRIP / 2 }))),
    ({ tone }) => tone,
  );
  const covered = [...tones.values()].flat().reduce((sum, { from, to }) => sum + to - from, 0);
  const isCovered = covered > strips.length * height - 1e-6;
  const most = Math.max(...[...tones.values()].map(({ length }) => length));
  const ground = isCovered ? [...tones.keys()].find((tone) => tones.get(tone)!.length === most) : undefined;
  const others = [...tones].filter(([tone]) => tone !== ground);
  return [
    ground ? tag("path", { d: boxPath(strips[0]!.x, FOLD, strips.length * STRIP, height), fill: ground }) : "",
    ...others.map(([tone, fields]) => stroke(uprights(fields), line(STRIP, tone))),
  ].join("");
}

/** Stretches with their middles at x. */
function uprights(fields: readonly (Omit<StripField, "tone"> & { readonly x: number })[]): string {
  return shortUprights(
    fields.map(({ x, from, to }): Upright => [x, from, to]),
    2,
  );
}

/** One outline round all strips, and a line between each two. */
function outlines(strips: readonly Strip[], height: number): string {
  const [first, ...others] = strips;
  const between = others.map(({ x }) => uprightPath([x, TITLE], height));
  return boxPath(first!.x, TITLE, strips.length * STRIP, height) + between.join("");
}

/** Level lines over strips; where neighbours have one at the same height, it is one line. */
function levels(strips: readonly Strip[], heights: (strip: Strip) => readonly number[]): Level[] {
  const rows = Map.groupBy(
    strips.flatMap((strip) => heights(strip).map((y) => ({ x: strip.x, y: toDecimals(y, 2) }))),
    ({ y }) => y,
  );
  return [...rows.values()].flatMap((row) => {
    const lines: [from: number, to: number, y: number][] = [];
    for (const { x, y } of row) {
      const before = lines.at(-1);
      if (before && x < before[1] + 1e-6) before[1] = x + STRIP;
      else lines.push([x, x + STRIP, y]);
    }
    return lines;
  });
}

function slants(strips: readonly Strip[]): string {
  return strips
    .flatMap(({ x: left, slants }) =>
      slants.map(({ x, y, across, down }) =>
        shortLine(
          [
            [left + x, y],
            [left + x + across, y + down],
          ],
          2,
        ),
      ),
    )
    .join("");
}

/** Each notch as a field along its strip's right side, bounded by dash-dot lines. */
function notches(strips: readonly Strip[]): string {
  const fields = strips.flatMap(({ x, notch }) => (notch ? [{ ...notch, x: x + STRIP - NOTCH / 2 }] : []));
  const sides = levels(strips, ({ notch }) => (notch ? [notch.from, notch.to] : []));
  return (
    stroke(uprights(fields), { ...line(NOTCH), "stroke-opacity": 0.12 }) +
    stroke(shortLevels(sides), lineLook("position"))
  );
}
