import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { type Crease, isTurned } from "../../core/corner/crease.ts";
import { creasesOf } from "../../core/corner/leaf-fold.ts";
import type { CornerLeaf } from "../../core/pattern/corner-pattern.ts";
import { isCheckpoint } from "../../core/plan/batches.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { leafName } from "../../words/leaves.ts";
import { formatDepth, formatNumber } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";

/** A mark on the fore-edge as text without a unit; `end` is where a crease ends that is steeper than 45°, from the fore-edge, and empty for one at 45°. */
export interface CreaseText {
  readonly at: string;
  readonly end: string;
}

/** One leaf of a kit that is folded by corners as text, in one unit system. */
export interface CornerRow {
  readonly leaf: LeafNumber;
  /** Empty on border leaves. */
  readonly patternPage: string;
  /** Printed recto, or which unnumbered leaf it is. */
  readonly bookPage: string;
  readonly unnumbered: boolean;
  readonly border: boolean;
  readonly checkpoint: boolean;
  /** How the leaf is folded: by corners, straight, or by both corners to one mark. */
  readonly kind: CornerLeaf["fold"]["kind"];
  /** Undefined where the corner stays. */
  readonly upper: CreaseText | undefined;
  readonly lower: CreaseText | undefined;
  /** `2 of 3`, or empty where the picture meets the leaf once. */
  readonly turn: string;
  /** Folds that the hand makes. */
  readonly folds: number;
}

/** The row of one leaf. */
export function cornerRow(leaf: CornerLeaf, style: LengthStyle): CornerRow {
  const { fold } = leaf;
  const creases = creasesOf(fold);
  const of = (corner: Crease["corner"]): CreaseText | undefined => {
    const crease = creases.find((one) => one.corner === corner);
    return crease && creaseText(crease, style);
  };
  return {
    leaf: leaf.leaf,
    patternPage: leaf.patternPage === null ? "" : String(leaf.patternPage),
    bookPage: leafName(leaf.name),
    unnumbered: leaf.bookPage === null,
    border: leaf.patternPage === null,
    checkpoint: isCheckpoint(leaf),
    kind: fold.kind,
    upper: of("head"),
    lower: of("tail"),
    turn: fold.kind === "corners" && fold.turn ? say.cornerTurn(fold.turn) : "",
    folds: fold.kind === "straight" ? 1 : creases.length,
  };
}

/** A crease in words. */
export function creaseText(crease: Crease, style: LengthStyle): CreaseText {
  return {
    at: formatNumber(crease.from.at, style),
    end: isTurned(crease) ? formatDepth(crease.to.depth, style.units) : "",
  };
}
