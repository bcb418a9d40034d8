import { leafNumber } from "../book/leaf-number.ts";
import { patternPageOf } from "../book/numbering.ts";
import { leafTip } from "../fan/fan.ts";
import { stationAt } from "../fan/front.ts";
import { levelsOfLeaf, type Placing } from "../fit/leaf-levels.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { type MarkRules, markLeaf } from "../spans/marks.ts";
import { cutsBetween } from "../spans/span.ts";
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
  const end = face.range.first + face.range.count + kit.fit.borderLeaves[1];
  for (let j = 0; j < end; j += 1) {
    if (kit.fit.lostLeaves.includes(leafNumber(j + 1))) continue;
    const folded = foldLeaf(kit, face, j, rules, placing);
    leaves.push(folded.leaf);
    merged.push(...folded.merged);
  }
  return { leaves, merged };
}

function foldLeaf(
  kit: Kit,
  face: Face,
  j: number,
  rules: MarkRules,
  placing: Placing,
): { readonly leaf: FoldedLeaf; readonly merged: readonly MergedOnLeaf[] } {
  const x = rules.depths.map((depth) => leafTip(face.fan, j, depth).x);
  const leaf = leafNumber(j + 1);
  const i = j - face.range.first;
  if (i < 0 || i >= face.range.count) {
    const spans = [{ from: 0, to: kit.book.leafHeight, level: placing.background }];
    return { leaf: { leaf, patternPage: null, x, spans, cuts: [] }, merged: [] };
  }
  const { spans, merged } = markLeaf(levelsOfLeaf(pictureColumns(kit, face, j), face.read, placing), rules);
  return {
    leaf: { leaf, patternPage: patternPageOf(i + 1), x, spans, cuts: cutsBetween(spans, rules.depths) },
    merged: merged.map((span) => ({ leaf, ...span })),
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
