import { type Figure, figureOf } from "../figure.ts";
import { lineLook } from "../line-kinds.ts";
import { MATERIAL } from "../material-tints.ts";
import { tag } from "../svg-text.ts";

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

export const CUT: Look = lineLook("cut");
export const SCORE: Look = lineLook("score");
export const POSITION: Look = lineLook("position");
/** Edges of paper, card and boards; dimensions and leaders, too. */
export const THIN: Look = lineLook("edge");
export const FAINT: Look = { ...THIN, stroke: "#767676", "stroke-width": "0.25" };
/** A folded edge as seen from its face: a grey band, so that no cut is taken for it. */
export const FOLDED: Look = { ...THIN, stroke: "#808080", "stroke-width": "1.4" };
/** Leaves of the opened book from above. */
export const LEAVES: Look = { ...THIN, stroke: "#6b5b3e" };
export const NO_LINE: Look = { stroke: "none" };

export const PAPER = "#fdf7e8";
export const { card: CARD, acetate: ACETATE } = MATERIAL;
export const BOARD = "#b9b09c";
export const GLUE = "#e5a84f";
/** A light that is on. */
export const GLOW = "#ffe9b0";
/** A mat, or packing. */
export const GROUND = "#e2e2e2";

/** A leaf seen edge-on: a strip of paper between its two sides. The `next` one is grey. */
export function edgeOn(d: string, next = false): string {
  const round = { d, fill: "none", "stroke-linecap": "round", "stroke-linejoin": "round" };
  return (
    tag("path", { ...round, stroke: next ? "#767676" : "#000", "stroke-width": 1 }) +
    tag("path", { ...round, stroke: next ? "#fff" : PAPER, "stroke-width": 0.5 })
  );
}

/** A finished diagram of a height (its margins not counted), with what it shows in words. */
export function diagram(height: number, label: string, parts: readonly string[]): Figure {
  const field = {
    left: -MARGIN.side,
    top: -MARGIN.top,
    width: WIDTH + 2 * MARGIN.side,
    height: height + 2 * MARGIN.top,
  };
  const drawn = linesJoined(parts.join("")).replaceAll(` stroke-width="${THIN["stroke-width"]}"`, "");
  return figureOf(field, label, drawn, DIAGRAM);
}

/** A diagram’s class, the height of letters that say no other, and the width of such lines. */
const DIAGRAM = { class: "figure diagram", "font-size": TEXT, "stroke-width": THIN["stroke-width"]! } as const;

/** Lines after each other that look alike are one: what ends one and begins the next goes. */
function linesJoined(drawing: string): string {
  return drawing.replace(/"( fill="none"[^>]*\/>)<path d="(?=[^"]*"\1)/g, "");
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
