import { escapeXml } from "../xml.ts";
import { num } from "./svg-text.ts";

/** A drawing for page and packet: its own SVG and what it shows in words. */
export interface Figure {
  readonly svg: string;
  readonly label: string;
}

/** The part of the plane that a figure shows, in the figure's own units; y down. */
export interface FigureArea {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What a figure is for style sheets. */
type FigureClass = "figure" | "figure diagram" | "cut-sheet";

/** Sets a drawing into its area, with its words as the text alternative. */
export function figureOf(area: FigureArea, label: string, drawing: string, name: FigureClass = "figure"): Figure {
  const { left, top, width, height } = area;
  const viewBox = [left, top, width, height].map((value) => num(value)).join(" ");
  return {
    label,
    svg: `<svg class="${name}" viewBox="${viewBox}" role="img" aria-label="${escapeXml(label)}">${drawing}</svg>`,
  };
}
