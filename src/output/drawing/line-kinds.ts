import { num } from "./svg-text.ts";

/**
 * Line kinds of every drawing, one table for diagrams, sheets and legend: cut and edge continuous, score dashed, position
 * dash-dot (general drafting habit). Weights and dashes lie so far apart that they are told at arm's length.
 */
export type LineKind = "cut" | "score" | "position" | "edge";

/** Printed widths, then dashes and gaps in turn, mm. */
const LOOKS: Readonly<Record<LineKind, readonly [width: number, ...dashes: number[]]>> = {
  cut: [0.5],
  score: [0.35, 2.4, 1.2],
  position: [0.25, 5, 1.1, 0.5, 1.1],
  edge: [0.2],
};

/** SVG presentation of a line kind; `times` as large, for drawings whose units are printed smaller or larger. */
export function lineLook(kind: LineKind, times = 1): Record<string, string> {
  const [width, ...dashes] = LOOKS[kind].map((mm) => num(mm * times));
  return {
    fill: "none",
    stroke: "#000",
    "stroke-width": width!,
    ...(dashes.length > 0 ? { "stroke-dasharray": dashes.join(" ") } : {}),
  };
}
