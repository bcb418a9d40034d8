import type { KitFolder } from "../files/named-files.ts";
import type { FieldPath } from "../files/problem.ts";
import type { Drawn } from "../picture/drawn.ts";
import type { WordFields } from "./schema.ts";

/** A line of words and its level. */
export interface Line {
  readonly text: string;
  readonly level: number;
}

/** Words as areas, on a canvas that is as large as they are. @throws ProblemError */
export function drawWords(
  lines: readonly Line[],
  _style: WordFields,
  _where: { readonly at: FieldPath; readonly kit: KitFolder },
): Drawn {
  return { width: 1, height: lines.length, shapes: [], notes: [] };
}
