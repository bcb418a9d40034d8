import { caliper } from "../book/book.ts";
import { leafNumber } from "../book/leaf-number.ts";
import { bookPageOf, numberLeaves, patternPageOf } from "../book/numbering.ts";
import { cornerRestingOpening } from "../corner/bulk.ts";
import { type CreaseRoom, isTurned } from "../corner/crease.ts";
import { creasesOf, depthAt, foldCorners, foldEmpty, type LeafFold, type Shown } from "../corner/leaf-fold.ts";
import { silhouetteOf } from "../corner/stretches.ts";
import { takeTurns } from "../corner/turns.ts";
import { type Fan, leafTip } from "../fan/fan.ts";
import { holdWidth } from "../fan/front.ts";
import { isFailure } from "../findings/outcome.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { columnsAt } from "../picture/column.ts";
import { markerOf } from "../spans/marks.ts";
import type { FitResult } from "./compute.ts";
import { cornerDoubts } from "./corner-doubts.ts";
import type { CornerFacts, CornerLeaf, CornerPattern } from "./corner-pattern.ts";
import { describeFit } from "./describe-fit.ts";
import { type Face, faceOf, layOutPicture } from "./face.ts";
import type { MergedOnLeaf } from "./pattern.ts";

/**
 * Computes the pattern of a kit that is folded by corners: the picture is laid out on the unfolded fore-edges, so on the
 * radius of the leaf's whole width, and each leaf shows one stretch of it. Pure: no files, no clock.
 */
export function computeCorner(kit: Kit): FitResult<CornerPattern> {
  const layout = layOutPicture(kit);
  if (isFailure(layout)) return { fits: false, finding: layout.failure };
  const face = faceOf(kit, layout.value);
  const { stretches, merged } = readStretches(kit, face);
  if (stretches.every(({ shown }) => shown.length === 0)) {
    const { height } = face.solution;
    return { fits: false, finding: { kind: "nothing-to-show", height, leastTab: kit.fit.leastTab } };
  }
  const { leaves, corner } = foldLeaves(kit, face, stretches);
  const fit = describeFit(kit, face, "corner", {
    holdWidth: cornerHoldWidth(face.fan, leaves),
    restingOpening: restingOf(kit, leaves),
  });
  const background = backgroundLevel(kit.levels);
  const { lostLeaves } = kit.fit;
  const pattern = { book: kit.book, levels: kit.levels, background, fit, corner, leaves, merged, lostLeaves };
  return { fits: true, pattern, findings: cornerDoubts(kit, pattern) };
}

/** The pattern of a kit that is known to fit, at another mark step, with the picture's top where it was. @throws Error where it does not fit after all */
export function cornerAt(kit: Kit, markStep: number, head: number): CornerPattern {
  const result = computeCorner({ ...kit, fit: { ...kit.fit, markStep, head } });
  if (!result.fits) throw new Error(`a kit that fitted fits no more: ${result.finding.kind}`);
  return result.pattern;
}

/** Hold width, mm: the outer picture leaves as they are folded at the head edge. */
export function cornerHoldWidth(fan: Fan, leaves: readonly CornerLeaf[]): number {
  const picture = leaves.filter(({ patternPage }) => patternPage !== null);
  const [first, last] = [picture[0]!, picture.at(-1)!];
  return holdWidth(fan, first.leaf - 1, depthAt(first.fold, 0), last.leaf - 1, depthAt(last.fold, 0));
}

/** The stretches of the picture that a leaf (from 0 in the book) meets, rounded to the step. */
interface MetStretches {
  readonly leaf: number;
  readonly shown: readonly Shown[];
}

/** What every picture leaf meets; lost leaves are left out. Too short ones are merged as spans are. */
function readStretches(
  kit: Kit,
  face: Face,
): { readonly stretches: readonly MetStretches[]; readonly merged: readonly MergedOnLeaf[] } {
  const background = backgroundLevel(kit.levels);
  const silhouette = {
    head: face.head,
    height: face.solution.height,
    leafHeight: kit.book.leafHeight,
    pictureHeight: kit.picture.height,
    levels: kit.fit.corner.levels,
    background,
  };
  const rules = {
    step: kit.fit.markStep,
    leastTab: kit.fit.leastTab,
    depths: kit.levels.map(({ depth }, k) => (k === 0 ? 0 : depth)),
  };
  const merged: MergedOnLeaf[] = [];
  const places = face.front.stations.map((station, i) => {
    const across = face.faces[i]!(station);
    return (kit.book.direction === "ltr" ? across : 1 - across) * kit.picture.width;
  });
  const columns = columnsAt(kit.picture, places);
  const mark = markerOf(rules);
  const stretches = places.flatMap((x, i): MetStretches[] => {
    const leaf = face.range.first + i;
    if (kit.fit.lostLeaves.includes(leafNumber(leaf + 1))) return [];
    const marked = mark(silhouetteOf(x, columns, silhouette));
    for (const one of marked.merged) merged.push({ leaf: leafNumber(leaf + 1), ...one });
    const shown = marked.spans.filter(({ level }) => level === 1).map(({ from, to }) => ({ from, to }));
    return [{ leaf, shown }];
  });
  return { stretches, merged };
}

/** Folds every leaf, borders included: picture leaves by their turn, all others as leaves that show nothing. */
function foldLeaves(
  kit: Kit,
  face: Face,
  stretches: readonly MetStretches[],
): { readonly leaves: readonly CornerLeaf[]; readonly corner: CornerFacts } {
  const { book, fit } = kit;
  const room: CreaseRoom = {
    leafHeight: book.leafHeight,
    reach: book.leafWidth - fit.gutterClearance,
    step: fit.markStep,
  };
  const empty = foldEmpty(fit.corner.empty, kit.levels[backgroundLevel(kit.levels) - 1]!.depth, room);
  const turns = takeTurns(stretches.map(({ shown }) => shown));
  const folds = new Map(
    stretches.map(({ leaf, shown }, i): [number, LeafFold] => {
      const turn = turns.byLeaf[i]!;
      const own = shown[turn ? turn.which - 1 : 0];
      return [leaf, own ? foldCorners(own, turn, room) : empty];
    }),
  );
  const numbering = numberLeaves(book);
  const { first, count } = face.range;
  const leaves: CornerLeaf[] = [];
  for (let j = 0; j < first + count + fit.borderLeaves[1]; j += 1) {
    const leaf = leafNumber(j + 1);
    if (fit.lostLeaves.includes(leaf)) continue;
    const name = numbering.nameOf(leaf);
    const patternPage = folds.has(j) ? patternPageOf(j - first + 1) : null;
    const x = leafTip(face.fan, j, 0).x;
    leaves.push({ leaf, patternPage, bookPage: bookPageOf(name), name, x, fold: folds.get(j) ?? empty });
  }
  const turned = leaves.filter(({ fold }) => creasesOf(fold).some(isTurned)).length;
  const emptyDepth = empty.kind === "straight" ? empty.depth : undefined;
  return { leaves, corner: { ...fit.corner, turns: turns.facts, leftOut: leftOut(kit), emptyDepth, turned } };
}

/** Levels that the picture has and that are not shown, the background not counted. */
function leftOut({ levels, fit }: Kit): number[] {
  return levels.flatMap(({ background }, k) => (background || fit.corner.levels.includes(k + 1) ? [] : [k + 1]));
}

function restingOf({ book, fit }: Kit, leaves: readonly CornerLeaf[]): number {
  const { leafHeight, leafWidth, blockThickness } = book;
  const unfolded = book.leaves - leaves.length;
  const stack = { leafHeight, leafWidth, blockThickness, caliper: caliper(book), unfolded, flapBulk: fit.flapBulk };
  return cornerRestingOpening(
    stack,
    leaves.map(({ fold }) => fold),
  );
}
