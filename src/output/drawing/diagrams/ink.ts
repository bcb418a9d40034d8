import { type Figure, figureOf } from "../figure.ts";
import { lineLook } from "../line-kinds.ts";

/** Width of every diagram between its margins. With them it is printed 84 mm wide, so that its units are printed millimetres. */
export const WIDTH = 80;
export const MARGIN = { side: 2, top: 1 } as const;

/** Height of letters: the usual one, and the least. */
export const TEXT = 3;
export const SMALL = 2.7;

/** A place in a diagram: x right, y down. */
export type At = readonly [x: number, y: number];

/** Presentation of a line. */
export type Look = Readonly<Record<string, string>>;

/** Small figures draw the line kinds a little wider than true-scale sheets do. */
const WIDER = 1.4;
export const CUT: Look = lineLook("cut", WIDER);
export const SCORE: Look = lineLook("score", WIDER);
export const POSITION: Look = lineLook("position", WIDER);
export const THIN: Look = { fill: "none", stroke: "#000", "stroke-width": "0.2" };
export const FAINT: Look = { fill: "none", stroke: "#767676", "stroke-width": "0.25" };
/** A folded edge as seen from its face. */
export const FOLDED: Look = { fill: "none", stroke: "#000", "stroke-width": "0.9", "stroke-linecap": "round" };
/** A leaf seen edge-on, and the leaf after it. */
export const EDGE_ON: Look = { ...FOLDED, "stroke-width": "0.55", "stroke-linejoin": "round" };
export const NEXT_EDGE_ON: Look = { ...EDGE_ON, stroke: "#767676" };
export const NO_LINE: Look = { stroke: "none" };

export const PAPER = "#fdf7e8";
export const CARD = "#f1e8d5";
export const BOARD = "#b9b09c";
export const ACETATE = "#e3eff0";
export const GLUE = "#e5a84f";
/** A mat, or packing. */
export const GROUND = "#e2e2e2";

/** A finished diagram of a height (its margins not counted), with what it shows in words. */
export function diagram(height: number, label: string, parts: readonly string[]): Figure {
  const field = {
    left: -MARGIN.side,
    top: -MARGIN.top,
    width: WIDTH + 2 * MARGIN.side,
    height: height + 2 * MARGIN.top,
  };
  return figureOf(field, label, parts.join(""), "figure diagram");
}

const WAVE = 0.6;

/** A torn side, where a thing goes on beyond what is drawn: a wave along x from one height to another. */
export function torn(x: number, from: number, to: number): At[] {
  const pieces = Math.max(8, Math.round(Math.abs(to - from) * 1.5));
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const y = from + ((to - from) * i) / pieces;
    return [x + WAVE * Math.sin((y - Math.min(from, to)) * 1.1), y] as const;
  });
}
