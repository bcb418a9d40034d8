import { caliper } from "../book/book.ts";
import { type LeafNumber, leafNumber } from "../book/leaf-number.ts";
import { bookPageOf, numberLeaves } from "../book/numbering.ts";
import { restingOpening } from "../fan/resting.ts";
import type { Doubt } from "../findings/doubt.ts";
import type { Failure } from "../findings/failure.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import { atOnce, type Steps } from "../in-steps.ts";
import { asCutKit } from "../kit/cut-kit.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import type { LightWish } from "../light/light.ts";
import { cutPocket, largestIn, type PocketBook } from "../light/pocket.ts";
import { regionRows } from "../light/region-rows.ts";
import type { Span } from "../spans/span.ts";
import { tacksOf } from "../spans/tacks.ts";
import { makeWindow } from "../window/make-window.ts";
import { describeFit } from "./describe-fit.ts";
import { doubtsOf } from "./doubts.ts";
import { boxOfFace, curveOfFace, type Face, faceOf, layOutPicture } from "./face.ts";
import { type FoldedLeaf, foldLeaves } from "./fold.ts";
import { holdWidthOf } from "./hold-width.ts";
import { depthsOf, type Pattern, type PatternBase, type PatternLeaf } from "./pattern.ts";

/** Whether a book carries a kit: with the pattern and what may disappoint, or why it does not. */
export type FitResult<Found extends PatternBase = Pattern> =
  | { readonly fits: true; readonly pattern: Found; readonly findings: readonly Doubt[] }
  | { readonly fits: false; readonly finding: Failure };

/** Computes the whole pattern of a kit that is cut, for its book: fan, picture leaves, spans, cuts, tacks, pocket, window. Pure: no files, no clock. */
export function computePattern(kit: Kit): FitResult {
  return atOnce(patternSteps(kit));
}

/** The same in steps: with thousands of leaves each takes a while. */
export function* patternSteps(kit: Kit): Steps<FitResult> {
  const layout = layOutPicture(kit);
  if (isFailure(layout)) return { fits: false, finding: layout.failure };
  const face = faceOf(kit, layout.value);
  yield;
  const open = openPattern(kit, face);
  yield;
  return closePattern(kit, face, open);
}

/** The pattern of a kit that is laid out, before light and window. */
export function openPattern(stated: Kit, face: Face): Pattern {
  const kit = asCutKit(stated);
  const folded = foldLeaves(kit, face);
  const leaves = nameLeaves(kit, folded.leaves);
  const fit = describeFit(kit, face, kit.fit.foldStyle, {
    holdWidth: holdWidthOf(face.fan, kit.levels, leaves),
    restingOpening: restingOf(kit, leaves),
  });
  return {
    book: kit.book,
    levels: kit.levels,
    background: backgroundLevel(kit.levels),
    fit,
    leaves,
    merged: folded.merged,
    lostLeaves: kit.fit.lostLeaves,
    pocket: undefined,
    window: undefined,
  };
}

/** The same with the light's pocket and the window, where the kit asks for them. */
export function closePattern(kit: Kit, face: Face, open: Pattern): FitResult {
  const closing = fitWindow(kit, face, open.leaves, open.fit.holdWidth);
  if (isFailure(closing)) return { fits: false, finding: closing.failure };
  const pattern = { ...open, ...closing.value };
  return { fits: true, pattern, findings: doubtsOf(kit, pattern, face) };
}

/** The pattern of a kit that is known to fit, at another mark step or in other units. @throws Error where it does not fit after all */
export function patternAt(kit: Kit): Pattern {
  const result = computePattern(kit);
  if (!result.fits) throw new Error(`${kit.slug} fits its book, but not at another step: ${result.finding.kind}`);
  return result.pattern;
}

/** Why a kit cannot be laid out on its book, without folding a leaf; undefined where it can. Light and window are not tried. */
export function tryFit(kit: Kit): Failure | undefined {
  const layout = layOutPicture(kit);
  return isFailure(layout) ? layout.failure : undefined;
}

/** The largest light that stands in a kit on its book: width at the kit's height, height at its width; 0 where the kit cannot be laid out. */
export function largestLight(kit: Kit, light: LightWish): { readonly diameter: number; readonly height: number } {
  const layout = layOutPicture(kit);
  if (isFailure(layout)) return { diameter: 0, height: 0 };
  const face = faceOf(kit, layout.value);
  return largestIn(light, pocketBook(kit, face, foldLeaves(kit, face).leaves, light.level));
}

function nameLeaves(kit: Kit, folded: readonly FoldedLeaf[]): PatternLeaf[] {
  const numbering = numberLeaves(kit.book);
  const depths = depthsOf(kit.levels);
  const spansOf = new Map(folded.map((one) => [one.leaf, one.spans]));
  return folded.map((one): PatternLeaf => {
    const name = numbering.nameOf(one.leaf);
    const tacks = tacksOf(one.spans, spansAfter(kit, spansOf, one.leaf), depths);
    return { ...one, bookPage: bookPageOf(name), name, tacks };
  });
}

/** Spans of the leaf after this one in the book: none for an unfolded leaf, undefined after the last. A lost leaf is gone. */
function spansAfter(
  kit: Kit,
  spansOf: ReadonlyMap<LeafNumber, readonly Span[]>,
  leaf: LeafNumber,
): readonly Span[] | undefined {
  let next = leafNumber(leaf + 1);
  while (kit.fit.lostLeaves.includes(next)) next = leafNumber(next + 1);
  if (next > kit.book.leaves) return undefined;
  return spansOf.get(next) ?? [];
}

/** The light's pocket and the window, where the kit asks for them. */
function fitWindow(
  kit: Kit,
  face: Face,
  leaves: readonly FoldedLeaf[],
  holdWidth: number,
): Outcome<Pick<Pattern, "pocket" | "window">> {
  const pocket = kit.light && cutPocket(kit.light, pocketBook(kit, face, leaves, kit.light.level));
  if (pocket && isFailure(pocket)) return pocket;
  const window =
    kit.insert &&
    makeWindow(kit.insert, {
      map: kit.picture,
      box: boxOfFace(face),
      curve: curveOfFace(kit, face),
      pocket: pocket?.value,
      holdWidth,
      motifs: kit.motifs,
    });
  if (window && isFailure(window)) return window;
  return { value: { pocket: pocket?.value, window: window?.value } };
}

function pocketBook(kit: Kit, face: Face, leaves: readonly FoldedLeaf[], level: number): PocketBook {
  const box = boxOfFace(face);
  const folded = new Map(leaves.map((leaf) => [leaf.leaf, leaf.spans]));
  return {
    fan: face.fan,
    curve: curveOfFace(kit, face),
    rows: regionRows(kit.picture, level, box),
    top: box.head,
    bottom: box.head + box.height,
    markStep: kit.fit.markStep,
    depths: depthsOf(kit.levels),
    leaves: Array.from({ length: kit.book.leaves }, (_, j) => {
      const leaf = leafNumber(j + 1);
      return kit.fit.lostLeaves.includes(leaf) ? undefined : (folded.get(leaf) ?? []);
    }),
  };
}

function restingOf({ book, fit, levels }: Kit, leaves: readonly PatternLeaf[]): number {
  const stack = {
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    caliper: caliper(book),
    unfolded: book.leaves - leaves.length,
    flapBulk: fit.flapBulk,
    depths: depthsOf(levels),
  };
  return restingOpening(
    stack,
    leaves.map((leaf) => leaf.spans),
  );
}
