import type { FieldPath } from "../files/problem.ts";
import type { Selection } from "./selection.ts";

/** Which shapes of an SVG file belong to which level, as a source of a picture states it. */
export interface Asked {
  /** For each level its shapes; left out, levels are found by their names. */
  readonly levels?: Readonly<Record<string, Selection>> | undefined;
  /** In place of `levels`: the level of all shapes that `names` picks; of all shapes without it. */
  readonly level?: string | undefined;
  readonly names?: Selection | undefined;
}

/** Where a source stands: its SVG file, and its place in the front matter. */
export interface Source {
  readonly file: string;
  readonly at: FieldPath;
}
