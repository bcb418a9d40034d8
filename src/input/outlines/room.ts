import type { Size } from "../../core/geometry/box.ts";
import { tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";

/** A length for which an outline has room, mm. @throws ProblemError at its field where it is more than `most` */
export function room(
  length: number,
  most: number,
  { at, size }: { readonly at: FieldPath; readonly size: Size },
): number {
  if (length <= most + 1e-9) return Math.min(length, most);
  const advice = {
    given: say.outlineGiven({ length: String(tidy(length, 2)) }),
    allowed: say.outlineMost({
      most: floored(most),
      width: String(tidy(size.width, 2)),
      height: String(tidy(size.height, 2)),
    }),
    remedy: say.outlineSmaller(),
  };
  throw problem(at, advice);
}

/** Rounded down, so that what is advised has room. */
function floored(length: number): string {
  return String(Math.floor(length * 100 + 1e-6) / 100);
}
