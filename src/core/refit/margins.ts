import { isFailure } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { layOutPicture } from "../pattern/face.ts";

/** Paper above and below the picture, mm. */
export interface Margins {
  readonly head: number;
  readonly tail: number;
}

/** Paper that an offer leaves at head and tail, mm (common practice, no source). */
const LEAST = 8;

/** Where a picture that is so tall and begins so far from the head leaves paper. */
export function marginsOf(
  { head, height }: { readonly head: number; readonly height: number },
  leafHeight: number,
): Margins {
  return { head, tail: leafHeight - head - height };
}

/** What a kit keeps free in any book: 8 mm, or less where its author's own picture goes nearer to the edge. */
export function leastMargins(kit: Kit): Margins {
  const layout = layOutPicture(kit);
  if (isFailure(layout)) return { head: LEAST, tail: LEAST };
  const { head, solution } = layout.value;
  const own = marginsOf({ head, height: solution.height }, kit.book.leafHeight);
  return { head: Math.min(LEAST, own.head), tail: Math.min(LEAST, own.tail) };
}

/** Whether so much stays free. */
export function keepsFree({ head, tail }: Margins, least: Margins): boolean {
  return head >= least.head - 1e-9 && tail >= least.tail - 1e-9;
}
