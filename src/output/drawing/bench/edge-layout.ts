import { depthsOf, type Pattern } from "../../../core/pattern/pattern.ts";
import type { LeafCard } from "../../views/leaf-card.ts";

/** How large the drawing may be, CSS pixels. */
export interface DrawingSpace {
  readonly width: number;
  readonly height: number;
}

/** Letters are this wide, as a share of their height, on the wide side. */
const LETTER = 0.54;
const SMALLEST = 13;
const LARGEST = 60;
/** From a number's disc to the leaf; from the edge to the marks' heights. Pixels. */
const LEAD_IN = 14;
const LEAD_OUT = 34;

/** Where things are, in pixels. x is `edge + inward · (depth − origin) · scale`. */
export interface EdgeLayout {
  readonly scale: number;
  /** Depth of the edge that is drawn, mm: 0, or the front level's where the whole leaf is folded there first. */
  readonly origin: number;
  readonly top: number;
  readonly foot: number;
  /** The fore-edge. */
  readonly edge: number;
  /** −1 where the fore-edge is at the right, as on the front of a leaf of a left-to-right book. */
  readonly inward: 1 | -1;
  /** How far inward the leaf is drawn, mm. */
  readonly shown: number;
  /** Height of letters: of the marks, and of the small words beside the leaf. */
  readonly size: number;
  readonly word: number;
  readonly circle: number;
}

/** Lays the edge of a leaf out so that marks, leaf and numbers fill the space. */
export function layEdge(card: LeafCard, pattern: Pattern, space: DrawingSpace): EdgeLayout {
  const { leafHeight, leafWidth, direction } = pattern.book;
  const { marks } = card.row;
  const depths = depthsOf(pattern.levels);
  const origin = pattern.fit.foldStyle === "stepped" && marks.length > 0 ? depths[0]! : 0;
  const shown = Math.min(leafWidth, 1.3 * Math.max(...depths)) - origin;
  const word = clamp(space.width / 24, 14, 20);
  const tall = space.height - 2 * (word + 9);
  const circle = clamp(Math.min(tall / (marks.length + 2) / 2.2, space.width / 22), 9, 22);
  const letters =
    marks.length > 0 ? LETTER * Math.max(8, ...marks.map(({ at, cut }) => at.length + cut.length + 2)) : 0;
  const aside = 2 * circle + LEAD_IN;
  const leadOut = marks.length > 0 ? LEAD_OUT : 0;
  const free = space.width - aside - leadOut;
  const wide = Math.max(0.45 * free, free - (shown * tall) / leafHeight);
  const size = clamp(Math.min((tall / (marks.length + 1)) * 0.8, wide / Math.max(1, letters)), SMALLEST, LARGEST);
  const scale = Math.min(tall / leafHeight, (free - letters * size) / shown);
  const left = (space.width - aside - shown * scale - leadOut - letters * size) / 2;
  const gutter = left + aside;
  const inward = direction === "ltr" ? -1 : 1;
  const edge = inward === -1 ? gutter + shown * scale : space.width - gutter - shown * scale;
  const top = (space.height - leafHeight * scale) / 2;
  return { scale, origin, top, foot: top + leafHeight * scale, edge, inward, shown, size, word, circle };
}

/** Pixels from the left at a depth from the fore-edge, mm. */
export function across(layout: EdgeLayout, depth: number): number {
  return layout.edge + layout.inward * (depth - layout.origin) * layout.scale;
}

/** Pixels from the top at a height from the head, mm. */
export function down(layout: EdgeLayout, mm: number): number {
  return layout.top + mm * layout.scale;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
