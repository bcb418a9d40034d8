import type { Span } from "../spans/span.ts";
import { cellAt, type Standing } from "./standing.ts";

/** What a ray meets: the folded edges of a level (0: an unfolded leaf), the side of a prouder leaf, or nothing of the leaves. */
export type Met = number | "side" | "nothing";

/** A stretch of heights, mm from the head, and what the viewer sees there. */
export interface SeenRun {
  readonly from: number;
  readonly to: number;
  readonly met: Met;
}

/**
 * What the viewer's ray meets at each height between two, from the head.
 *
 * Seen from above, a leaf is a line from the gutter to its tip, x = root + r·sin θ (domain: the fan). A ray goes inward and
 * passes the surfaces of the levels one after the other, and at each deeper one it is in the cell of a leaf further out, as
 * the cells of a level at radius R stand at R·sin θ. So it crosses the leaves from its cell at the proudest level to its cell
 * at the deepest. A leaf folded at level k, with the ray's cell of that level at leaf c: before c the ray is still in front
 * of the leaf's tip and passes it; at c it meets the folded edge; behind c it meets the side of the leaf. Leaves are lines:
 * the thickness of paper and flaps is not counted.
 */
export function castRay(standing: Standing, ray: number, from: number, to: number): SeenRun[] {
  const { spans, rows, proudest } = standing;
  const cells = rows.map((row) => cellAt(row, ray));
  const outward = ray < 0 ? -1 : 1;
  const met: SeenRun[] = [];
  // Where no leaf is met yet: each stretch from one place to the next.
  let open: readonly number[] = [from, to];
  let at = Math.min(spans.length - 1, Math.max(0, cells[proudest]!));
  while (open.length > 0 && at >= 0 && at < spans.length) {
    open = meetLeaf(open, spans[at]!, { at, outward, cells }, met);
    at += outward;
  }
  for (let i = 0; i < open.length; i += 2) met.push({ from: open[i]!, to: open[i + 1]!, met: "nothing" });
  return met.sort((a, b) => a.from - b.from);
}

/** How a ray meets a leaf: the leaf, which way the ray passes the leaves, and its cell of each level. */
interface Meeting {
  readonly at: number;
  readonly outward: number;
  readonly cells: readonly number[];
}

/** Takes from the open heights those at which a leaf is met: at a level whose cell the ray is in there, or has left behind. */
function meetLeaf(
  open: readonly number[],
  spans: readonly Span[],
  { at, outward, cells }: Meeting,
  met: SeenRun[],
): readonly number[] {
  const left: number[] = [];
  let first = 0;
  for (let k = 0; k < open.length; k += 2) {
    let begun = open[k]!;
    const end = open[k + 1]!;
    while (first < spans.length && spans[first]!.to <= begun) first += 1;
    for (let i = first; i < spans.length && spans[i]!.from < end; i += 1) {
      const span = spans[i]!;
      const behind = (at - cells[span.level]!) * outward;
      if (behind < 0) continue;
      const from = Math.max(begun, span.from);
      const to = Math.min(end, span.to);
      if (from > begun) left.push(begun, from);
      met.push({ from, to, met: behind === 0 ? span.level : "side" });
      begun = to;
    }
    if (begun < end) left.push(begun, end);
  }
  return left;
}
