import type { Problem } from "./problem.ts";

/** A photo that a front matter or a text names, and where. */
export interface NamedPhoto {
  readonly file: string;
  readonly at: Problem["at"];
}
