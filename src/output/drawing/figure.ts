import { num, tag } from "./svg-text.ts";

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

/** What a figure is for style sheets, and what holds for all that is in it. */
interface FigureLook {
  readonly class: "figure" | "figure diagram" | "cut-sheet";
  readonly "font-size"?: number;
}

/** Sets a drawing into its area, with its words as the text alternative. */
export function figureOf(
  area: FigureArea,
  label: string,
  drawing: string,
  look: FigureLook = { class: "figure" },
): Figure {
  const { left, top, width, height } = area;
  const viewBox = [left, top, width, height].map((value) => num(value)).join(" ");
  return {
    label,
    svg: tag("svg", { ...look, viewBox, role: "img", "aria-label": label }, drawing),
  };
}
