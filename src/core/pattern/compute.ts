import { caliper } from "../book/book.ts";
import { bookPageOf, numberLeaves, patternPageOf } from "../book/numbering.ts";
import { type Fan, leafTip } from "../fan/fan.ts";
import { boardWidth, type Front, holdWidth, type LeafRange, layFront, stationAt } from "../fan/front.ts";
import { type FrontCurve, frontCurve } from "../fan/front-curve.ts";
import { restingOpening } from "../fan/resting.ts";
import { type FaceMap, layFaces } from "../fit/face.ts";
import { levelsOfLeaf, type Placing } from "../fit/leaf-levels.ts";
import { type Solution, solveFit } from "../fit/solve.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import type { LightWish } from "../light/light.ts";
import { cutPocket, largestIn, type PocketBook } from "../light/pocket.ts";
import { type PictureBox, regionRows } from "../light/region-rows.ts";
import { type ColumnReader, readColumns } from "../picture/column.ts";
import { Problem } from "../problem.ts";
import { markLeaf } from "../spans/marks.ts";
import { cutsBetween, type Span } from "../spans/span.ts";
import { tacksOf } from "../spans/tacks.ts";
import { roundTo } from "../units/length.ts";
import { makeInsert } from "../window/insert.ts";
import { edgeAtHead } from "./edge-at-head.ts";
import { checkBook, checkFlaps, checkLostLeaves, checkOpening, checkPlace } from "./limits.ts";
import { type AbsorbedOnLeaf, depthsOf, type Fit, type Pattern, type PatternLeaf } from "./pattern.ts";
import { warningsOf } from "./warnings.ts";

/**
 * Computes the whole pattern of a kit for its book: fan, picture leaves, spans, cuts, tacks.
 * Pure: no files, no clock. @throws Problem where the kit cannot be made as stated, saying what would do.
 */
export function computePattern(kit: Kit): Pattern {
  checkBook(kit);
  checkFlaps(kit);
  const face = fitFace(kit);
  const numbering = numberLeaves(kit.book);
  const folded = foldLeaves(kit, face);
  const spansOf = new Map(folded.leaves.map((one) => [one.leaf, one.spans]));
  const leaves = folded.leaves.map((one): PatternLeaf => {
    const name = numbering.nameOf(one.leaf);
    return {
      ...one,
      bookPage: bookPageOf(name),
      name,
      tacks: tacksOf(one.spans, spansAfter(kit, spansOf, one.leaf), depthsOf(kit.levels)),
    };
  });
  const fit = describeFit(kit, face, leaves);
  const pattern = {
    book: kit.book,
    levels: kit.levels,
    background: backgroundLevel(kit.levels),
    fit,
    leaves,
    absorbed: folded.absorbed,
    lostLeaves: kit.fit.lostLeaves,
    ...fitWindow(kit, face, folded.leaves, fit.edgeWidth),
  };
  return { ...pattern, warnings: warningsOf(kit, pattern, face) };
}

/** Why a kit cannot be laid out on its book, without folding a leaf; undefined where it can. Light and window are not tried. */
export function tryFit(kit: Kit): Problem | undefined {
  try {
    checkBook(kit);
    checkFlaps(kit);
    placePicture(kit);
    return undefined;
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** The largest light that stands in a kit on its book: width at the kit's height, height at its width. @throws Problem where the kit cannot be laid out */
export function largestLight(kit: Kit, light: LightWish): { readonly diameter: number; readonly height: number } {
  const face = fitFace(kit);
  const { leaves } = foldLeaves(kit, face);
  return largestIn(light, pocketBook(kit, face, leaves, light.level));
}

/** The fan with the picture laid out on its front. */
export interface Face {
  readonly fan: Fan;
  readonly range: LeafRange;
  readonly front: Front;
  readonly solution: Solution;
  readonly head: number;
  readonly faces: readonly FaceMap[];
  readonly read: ColumnReader;
}

/** Where the picture comes to lie: what every limit but those of light and window looks at. */
type Place = Pick<Face, "fan" | "range" | "solution" | "head">;

type FoldedLeaf = Omit<PatternLeaf, "bookPage" | "name" | "tacks">;

function placePicture(kit: Kit): Place {
  const { book, fit } = kit;
  checkOpening(kit);
  const frontDepth = kit.levels[0]!.depth;
  const first = fit.borderLeaves[0];
  const stillFan = {
    leaves: book.leaves,
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    spine: fit.spine,
    direction: book.direction,
  };
  const solution = solveFit(fit, {
    fan: stillFan,
    frontDepth,
    view: fit.view,
    firstLeaf: first,
    mostLeaves: book.leaves - first - fit.borderLeaves[1],
    units: kit.units,
    aspect: kit.picture.width / kit.picture.height,
  });
  const head = fit.head ?? roundTo((book.leafHeight - solution.height) / 2, fit.markStep);
  checkPlace(kit, solution, head);
  const fan = { ...stillFan, opening: solution.opening };
  const range = { first, count: solution.pictureLeaves };
  checkLostLeaves(kit, range);
  return { fan, range, solution, head };
}

function fitFace(kit: Kit): Face {
  const place = placePicture(kit);
  const front = layFront(place.fan, place.range, kit.levels[0]!.depth, kit.fit.view);
  const faces = layFaces(
    front,
    kit.fit.lostLeaves.map((leaf) => leaf - 1 - place.range.first),
  );
  return { ...place, front, faces, read: readColumns(kit.picture) };
}

function foldLeaves(kit: Kit, face: Face): { leaves: FoldedLeaf[]; absorbed: AbsorbedOnLeaf[] } {
  const depths = depthsOf(kit.levels);
  const rules = { step: kit.fit.markStep, leastTab: kit.fit.leastTab, depths };
  const background = backgroundLevel(kit.levels);
  const placing: Placing = {
    head: face.head,
    height: face.solution.height,
    leafHeight: kit.book.leafHeight,
    pictureHeight: kit.picture.height,
    background,
  };
  const absorbed: AbsorbedOnLeaf[] = [];
  const leaves: FoldedLeaf[] = [];
  const last = face.range.first + face.range.count + kit.fit.borderLeaves[1];
  for (let j = 0; j < last; j += 1) {
    if (kit.fit.lostLeaves.includes(j + 1)) continue;
    const x = depths.map((depth) => leafTip(face.fan, j, depth).x);
    const i = j - face.range.first;
    if (i < 0 || i >= face.range.count) {
      const spans = [{ from: 0, to: kit.book.leafHeight, level: background }];
      leaves.push({ leaf: j + 1, patternPage: null, x, spans, cuts: [] });
      continue;
    }
    const marked = markLeaf(levelsOfLeaf(pictureColumns(kit, face, j), face.read, placing), rules);
    absorbed.push(...marked.absorbed.map((span) => ({ leaf: j + 1, ...span })));
    leaves.push({
      leaf: j + 1,
      patternPage: patternPageOf(i + 1),
      x,
      spans: marked.spans,
      cuts: cutsBetween(marked.spans, depths),
    });
  }
  return { leaves, absorbed };
}

/** The picture's x (picture units) under each level's tip of leaf j. Walking along the fan there is no parallax. */
function pictureColumns(kit: Kit, face: Face, j: number): number[] {
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

/** Spans of the leaf after this one in the book: none for an unfolded leaf, undefined after the last. A lost leaf is gone. */
function spansAfter(
  kit: Kit,
  spansOf: ReadonlyMap<number, readonly Span[]>,
  leaf: number,
): readonly Span[] | undefined {
  let next = leaf + 1;
  while (kit.fit.lostLeaves.includes(next)) next += 1;
  if (next > kit.book.leaves) return undefined;
  return spansOf.get(next) ?? [];
}

/** The light's pocket and the window, where the kit asks for them. */
function fitWindow(
  kit: Kit,
  face: Face,
  leaves: readonly FoldedLeaf[],
  edge: number,
): Pick<Pattern, "pocket" | "insert"> {
  const curve = curveOf(kit, face);
  const box = boxOf(face);
  const pocket = kit.light && cutPocket(kit.light, pocketBook(kit, face, leaves, kit.light.level));
  const insert =
    kit.insert &&
    makeInsert(kit.insert, {
      map: kit.picture,
      box,
      curve,
      pocket,
      edgeWidth: edge,
      motifs: kit.motifs,
      units: kit.units,
    });
  return { pocket, insert };
}

function curveOf(kit: Kit, face: Face): FrontCurve {
  return frontCurve(face.fan, face.range, face.front, kit.levels[0]!.depth);
}

function boxOf(face: Face): PictureBox {
  return { head: face.head, height: face.solution.height, width: face.solution.width };
}

function pocketBook(kit: Kit, face: Face, leaves: readonly FoldedLeaf[], level: number): PocketBook {
  const box = boxOf(face);
  const folded = new Map(leaves.map((leaf) => [leaf.leaf, leaf.spans]));
  return {
    fan: face.fan,
    curve: curveOf(kit, face),
    rows: regionRows(kit.picture, level, box),
    top: box.head,
    bottom: box.head + box.height,
    markStep: kit.fit.markStep,
    depths: depthsOf(kit.levels),
    leaves: Array.from({ length: kit.book.leaves }, (_, j) =>
      kit.fit.lostLeaves.includes(j + 1) ? undefined : (folded.get(j + 1) ?? []),
    ),
    levelName: kit.levels[level - 1]!.name,
    units: kit.units,
  };
}

function describeFit(kit: Kit, face: Face, leaves: readonly PatternLeaf[]): Fit {
  const { book, fit } = kit;
  const depths = depthsOf(kit.levels);
  const stack = {
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    caliper: caliper(book),
    unfolded: book.leaves - leaves.length,
    flapBulk: fit.flapBulk,
    depths,
  };
  return {
    firstLeaf: face.range.first + 1,
    lastLeaf: face.range.first + face.range.count,
    opening: face.solution.opening,
    spine: fit.spine,
    view: fit.view,
    head: face.head,
    height: face.solution.height,
    width: face.solution.width,
    stretch: face.solution.stretch,
    holdWidth: holdWidth(face.fan, face.range, depths[0]!),
    edgeWidth: edgeAtHead(face.fan, kit.levels, leaves),
    boardWidth: boardWidth(face.fan, book.square, book.boardThickness),
    restingOpening: restingOpening(
      stack,
      leaves.map((leaf) => leaf.spans),
    ),
    foldStyle: fit.foldStyle,
    markStep: fit.markStep,
    leastTab: fit.leastTab,
  };
}
