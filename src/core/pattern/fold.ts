import { leafNumber } from "../book/leaf-number.ts";
import { patternPageOf } from "../book/numbering.ts";
import { leafTip } from "../fan/fan.ts";
import { stationAt } from "../fan/front.ts";
import { levelsOfLeaf, type Placing } from "../fit/leaf-levels.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { columnsAt } from "../picture/column.ts";
import { LeafSpans } from "../spans/leaf-spans.ts";
import { type MarkRules, markerOf } from "../spans/marks.ts";
import { cutsBetween, type Span } from "../spans/span.ts";
import type { Face } from "./face.ts";
import { depthsOf, type MergedOnLeaf, type PatternLeaf } from "./pattern.ts";

/** A leaf with its spans and cuts, before it is named and its tacks are looked for. */
export type FoldedLeaf = Omit<PatternLeaf, "bookPage" | "name" | "tacks">;

export interface Folded {
  readonly leaves: readonly FoldedLeaf[];
  readonly merged: readonly MergedOnLeaf[];
}

/** Every leaf that is folded, borders included, in book order; lost leaves are left out. */
export function foldLeaves(kit: Kit, face: Face): Folded {
  const rules = { step: kit.fit.markStep, leastTab: kit.fit.leastTab, depths: depthsOf(kit.levels) };
  const placing: Placing = {
    head: face.head,
    height: face.solution.height,
    leafHeight: kit.book.leafHeight,
    pictureHeight: kit.picture.height,
    background: backgroundLevel(kit.levels),
  };
  const merged: MergedOnLeaf[] = [];
  const leaves: FoldedLeaf[] = [];
  const { first, count } = face.range;
  const xs = Array.from({ length: count }, (_, i) => pictureColumns(kit, face, first + i));
  const columns = columnsAt(
    kit.picture,
    xs.flatMap((x) => x.slice(0, -1)),
  );
  const [mark, exact] = [markerOf(rules), new LeafSpans()];
  const end = first + count + kit.fit.borderLeaves[1];
  for (let j = 0; j < end; j += 1) {
    if (kit.fit.lostLeaves.includes(leafNumber(j + 1))) continue;
    const x = xs[j - first];
    const shown = x && mark(levelsOfLeaf(x, columns, placing, exact));
    leaves.push(foldedLeaf(kit, face, j, rules, shown?.spans));
    for (const { from, to, level, into } of shown?.merged ?? [])
      merged.push({ leaf: leafNumber(j + 1), from, to, level, into });
  }
  return { leaves, merged };
}

/** A leaf with the picture's spans, or a border leaf, which has the background alone. */
function foldedLeaf(kit: Kit, face: Face, j: number, { depths }: MarkRules, shown?: readonly Span[]): FoldedLeaf {
  const spans = shown ?? [{ from: 0, to: kit.book.leafHeight, level: backgroundLevel(kit.levels) }];
  return {
    leaf: leafNumber(j + 1),
    patternPage: shown ? patternPageOf(j - face.range.first + 1) : null,
    x: depths.map((depth) => leafTip(face.fan, j, depth).x),
    spans,
    cuts: cutsBetween(spans, depths),
  };
}

/** The picture's x (picture units) under each level's tip of leaf j. Walking along the fan there is no parallax. */
export function pictureColumns(kit: Kit, face: Face, j: number): number[] {
  const i = j - face.range.first;
  return kit.levels.map((level) => {
    const station =
      kit.fit.view === "along"
        ? face.front.stations[i]!
        : stationAt(face.fan, face.range, face.front, kit.levels[0]!.depth, j, level.depth);
    const fraction = face.faces[i]!(station);
    return (kit.book.direction === "ltr" ? fraction : 1 - fraction) * kit.picture.width;
  });
}
