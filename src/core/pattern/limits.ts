import type { Book } from "../book/book.ts";
import { plateLeaves } from "../book/last-page.ts";
import { leafNumber } from "../book/leaf-number.ts";
import { leavesNeeded } from "../book/numbering.ts";
import type { LeafRange } from "../fan/front.ts";
import type {
  BookFailure,
  CornerFailure,
  FitFailure,
  FlapFailure,
  LevelFailure,
  LostLeafFailure,
} from "../findings/failure.ts";
import { type Solution, widestOpening } from "../fit/solve.ts";
import { backgroundLevel, type Kit, misplacedLevel } from "../kit/kit.ts";

/** The printed pages, plates and borders must find room in the book. */
export function bookFailure({ book, fit }: Kit): BookFailure | undefined {
  const contradiction = numberingFailure(book);
  if (contradiction) return contradiction;
  const { leaves } = book;
  const [before, after] = fit.borderLeaves;
  const { shape } = fit;
  const picture = shape.solve === "pictureLeaves" || shape.pictureLeaves === "fill" ? 2 : shape.pictureLeaves;
  if (before + picture + after <= leaves) return undefined;
  return { kind: "too-few-leaves", before, picture, after, leaves, most: leaves - before - after };
}

function numberingFailure(book: Book): BookFailure | undefined {
  const { lastPage, leaves, pageOneLeaf, plates } = book;
  if (lastPage < 1) return { kind: "no-page", pageOneLeaf, plates: plateLeaves(plates), leaves };
  const beyond = plates.findIndex(({ afterPage }) => afterPage > lastPage);
  if (beyond >= 0)
    return { kind: "plates-after-last-page", entry: beyond + 1, afterPage: plates[beyond]!.afterPage, lastPage };
  const needed = leavesNeeded(book);
  return needed > leaves ? { kind: "pages-need-more-leaves", lastPage, leaves, pageOneLeaf, needed } : undefined;
}

/** Each level lies deeper than the one before it. */
export function levelFailure({ levels }: Kit): LevelFailure | undefined {
  const at = misplacedLevel(levels);
  if (at < 0) return undefined;
  return { kind: "levels-out-of-order", level: at + 1, depth: levels[at]!.depth, before: levels[at - 1]!.depth };
}

/**
 * A flap must not run into the gutter. Single: a flap of depth d reaches 2d inward. Stepped: the leaf is folded at the
 * front depth d₁ first, so the second flap at depth d reaches 2d − d₁. Folded by corners, only leaves that show nothing are
 * folded straight, at the background's line.
 */
export function flapFailure(kit: Kit): FlapFailure | undefined {
  const { leafWidth } = kit.book;
  const { foldStyle, gutterClearance: clearance } = kit.fit;
  const front = kit.levels[0]!.depth;
  for (const [i, { depth, background }] of kit.levels.entries()) {
    if (foldStyle === "corner" && !(background && kit.fit.corner.empty === "line")) continue;
    const second = foldStyle === "stepped" && i > 0;
    const reach = second ? 2 * depth - front : 2 * depth;
    if (reach + clearance <= leafWidth + 1e-9) continue;
    const deepest = second ? (leafWidth - clearance + front) / 2 : (leafWidth - clearance) / 2;
    return { kind: "flap-in-gutter", level: i + 1, depth, reach, leafWidth, clearance, deepest, foldStyle };
  }
  return undefined;
}

/** A folded corner reaches at least so far inward, mm (common practice, no source). */
const LEAST_CORNER = 10;

/** What a kit cannot have that is folded by corners, or what its leaves have no room for. */
export function cornerFailure({ book, fit, levels, light, insert }: Kit): CornerFailure | undefined {
  if (fit.foldStyle !== "corner") return undefined;
  if (light || insert) return { kind: "needs-knife", part: light ? "light" : "window" };
  const level = backgroundLevel(levels);
  if (fit.corner.levels.includes(level)) return { kind: "background-shown", level };
  const { leafWidth } = book;
  const { gutterClearance: clearance } = fit;
  if (leafWidth - clearance >= LEAST_CORNER) return undefined;
  return { kind: "no-room-for-corners", leafWidth, clearance, least: LEAST_CORNER };
}

/** Flat on the table is the widest that a picture seen from the front can be opened. */
export function openingFailure({ fit }: Kit): FitFailure | undefined {
  const { shape, view } = fit;
  const widest = widestOpening(view);
  if (shape.solve === "opening" || shape.opening <= widest + 1e-9) return undefined;
  return { kind: "opening-too-wide", opening: shape.opening, widest, view };
}

/** The picture must lie on the leaf. */
export function placeFailure(kit: Kit, { height }: Solution, head: number): FitFailure | undefined {
  const { leafHeight } = kit.book;
  if (head >= 0 && head + height <= leafHeight + 1e-9) return undefined;
  return {
    kind: "picture-off-leaf",
    head: Math.max(head, 0),
    height,
    leafHeight,
    room: roomOnLeaf(kit),
    heightSolved: kit.fit.shape.solve === "height",
    headStated: (kit.fit.head ?? 0) !== 0,
  };
}

/** A failure whose advised height also lies on the leaf: what it advises must not fail in its turn. */
export function advisedOnLeaf(kit: Kit, failure: FitFailure): FitFailure {
  if (failure.kind === "picture-too-narrow" && failure.leastHeight > roomOnLeaf(kit))
    return { ...failure, leastHeight: Number.POSITIVE_INFINITY };
  if (!("mostHeight" in failure)) return failure;
  return { ...failure, mostHeight: Math.min(failure.mostHeight, roomOnLeaf(kit)) };
}

/** Height that the leaf has for the picture, below a head that is stated. */
function roomOnLeaf({ book, fit }: Kit): number {
  return book.leafHeight - Math.max(0, fit.head ?? 0);
}

/** Lost leaves must be picture leaves, and two must remain after them. */
export function lostLeafFailure({ fit }: Kit, range: LeafRange): LostLeafFailure | undefined {
  const first = leafNumber(range.first + 1);
  const last = leafNumber(range.first + range.count);
  const outside = fit.lostLeaves.find((leaf) => leaf < first || leaf > last);
  if (outside !== undefined) return { kind: "lost-leaf-outside", leaf: outside, first, last };
  const lost = new Set(fit.lostLeaves).size;
  return range.count - lost < 2 ? { kind: "too-few-remain", lost, leaves: range.count } : undefined;
}
