import type { StepId } from "../../core/steps/work-step.ts";
import type { Figure } from "../drawing/figure.ts";
import { type Html, raw } from "./markup.ts";

/** A drawing that a kit's page shows twice, by its id there. */
type Drawn = "drawn-book" | "drawn-pocket" | "drawn-pocket-front" | "drawn-layers";

/** Steps that repeat a drawing of another part of the page. */
const REPEATED: Partial<Readonly<Record<StepId, Drawn>>> = {
  check: "drawn-book",
  notch: "drawn-pocket",
  light: "drawn-pocket-front",
  cut: "drawn-layers",
};

const END = "</svg>";

/** A drawing that a step of the page repeats. */
export function drawnOnce({ svg }: Figure, id: Drawn): Html {
  const head = headOf(svg);
  return raw(`${head}<g id="${id}">${svg.slice(head.length, -END.length)}</g>${END}`);
}

/** A step's drawing, which is another part's where that has the same. */
export function drawnAgain(step: StepId, { svg }: Figure): string {
  const id = REPEATED[step];
  return id === undefined ? svg : `${headOf(svg)}<use href="#${id}"/>${END}`;
}

/** The element's own tag, with its words. */
function headOf(svg: string): string {
  return svg.slice(0, svg.indexOf(">") + 1);
}
