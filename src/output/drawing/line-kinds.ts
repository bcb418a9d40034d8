import { num } from "./svg-text.ts";

/**
 * Line kinds of every drawing, by pattern: cut continuous, score dashed, position dash-dot (general drafting habit).
 * Dashes are multiples of the line width, as in the pattern table that CAD line types follow: dashed 12, −3; dash-dot 12, −3, 0.5, −3.
 */
export type LineKind = "cut" | "score" | "position";

const WIDTH: Readonly<Record<LineKind, number>> = { cut: 0.35, score: 0.25, position: 0.25 };
const PATTERN: Readonly<Record<LineKind, readonly number[]>> = { cut: [], score: [12, 3], position: [12, 3, 0.5, 3] };

/** SVG presentation of a line kind; `thin` draws it finer, for small figures. */
export function lineLook(kind: LineKind, thin = 1): Record<string, string> {
  const width = WIDTH[kind] * thin;
  const dashes = PATTERN[kind].map((part) => num(part * width)).join(" ");
  return {
    fill: "none",
    stroke: "#000",
    "stroke-width": num(width),
    ...(dashes ? { "stroke-dasharray": dashes } : {}),
  };
}
