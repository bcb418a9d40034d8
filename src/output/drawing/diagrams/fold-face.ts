import type { Pattern } from "../../../core/pattern/pattern.ts";
import * as say from "../../../words/messages.ts";
import { type Boundary, depthOf, levelTint } from "./example-leaf.ts";
import { CUT, FAINT, FOLDED, NO_LINE, PAPER, SCORE, THIN, torn, WIDTH } from "./ink.ts";
import type { Pen } from "./pen.ts";

/** A panel's field: the fore-edge piece of a leaf with two spans, face above and section below. */
export interface FaceCell {
  readonly pen: Pen;
  readonly pattern: Pattern;
  readonly boundary: Boundary;
  /** Drawing units per mm. */
  readonly scale: number;
  /** Where a depth stands. */
  readonly x: (depth: number) => number;
}

/** What is seen of the piece. Depths in mm from the unfolded fore-edge; the upper span first. */
export interface FaceState {
  /** Where each span ends toward the fore-edge. */
  readonly edges: readonly [number, number];
  readonly scores: readonly number[];
  readonly cut?: readonly [number, number];
  readonly dimensions?: readonly FaceDimension[];
  /** Whether the part folded back last shows where it was. */
  readonly folding?: boolean;
}

/** A dimension from an edge, the fore-edge where none is said; above the piece or below it. */
interface FaceDimension {
  readonly depth: number;
  readonly from?: number;
  readonly words: string;
  readonly above?: boolean;
}

/** Places that all panels share. */
export const FACE_CELL = { torn: 1.5, foreEdge: 33, top: 12, middle: 21, foot: 30 };

/** The piece from its face. */
export function drawFace(cell: FaceCell, state: FaceState): string {
  const { pen, x } = cell;
  const { top, middle, foot } = FACE_CELL;
  const spans = [
    { from: top, to: middle, edge: state.edges[0], level: cell.boundary.upper },
    { from: middle, to: foot, edge: state.edges[1], level: cell.boundary.lower },
  ];
  return [
    Math.max(...state.edges) > 0 ? foreEdgeBefore(cell) : "",
    ...spans.map((span) => pieceOf(cell, span)),
    pen.line(torn(FACE_CELL.torn, top, foot), THIN),
    ...spans.map((span) => edgeOf(cell, span)),
    edgeBetween(cell, state),
    ...state.scores.map((depth) => scoreAt(cell, state, depth)),
    state.cut ? pen.segment(x(state.cut[0]), middle, x(state.cut[1]), middle, CUT) : "",
    ...spans.map((span) => pen.badge([FACE_CELL.torn + 4, (span.from + span.to) / 2], String(span.level))),
    ...(state.folding ? spans.filter((span) => span.edge > 0).map((span) => foldArrow(cell, span)) : []),
    edgeWords(cell, state),
    ...(state.dimensions ?? []).map((one) => dimensionOf(cell, one)),
  ].join("");
}

interface FaceSpan {
  readonly from: number;
  readonly to: number;
  readonly edge: number;
  readonly level: number;
}

/** Where the fore-edge was before it was folded back. */
function foreEdgeBefore({ pen, x }: FaceCell): string {
  const { torn: left, top, foot } = FACE_CELL;
  return pen.shape(
    [
      [left, top],
      [x(0), top],
      [x(0), foot],
      [left, foot],
    ],
    "#ffffff",
    FAINT,
  );
}

/** One span's paper; folded at its own line it has its level's tint at the edge. */
function pieceOf({ pen, x, pattern }: FaceCell, { from, to, edge, level }: FaceSpan): string {
  const right = x(edge);
  const tint = edge === depthOf(pattern, level) ? levelTint(pattern, level) : PAPER;
  const outer = from === FACE_CELL.top ? from : to;
  return [
    pen.shape([[right, from], [right, to], ...torn(FACE_CELL.torn, to, from)], PAPER, NO_LINE),
    edge > 0 ? pen.box([right - 2.4, from], [right, to], tint, NO_LINE) : "",
    pen.segment(FACE_CELL.torn, outer, right, outer, THIN),
  ].join("");
}

/** Names the edge that lies at the maker's right hand while both spans still share it. */
function edgeWords({ pen, x }: FaceCell, { edges, folding = false }: FaceState): string {
  const middle = (FACE_CELL.top + FACE_CELL.foot) / 2;
  if (edges[0] !== edges[1] || folding) return "";
  return edges[0] === 0
    ? pen.upright([x(0) + 2.6, middle], say.drawForeEdge())
    : pen.upright([x(edges[0]) + 2.7, middle], say.drawFoldedEdge());
}

function dimensionOf({ pen, x }: FaceCell, { depth, from = 0, words, above = false }: FaceDimension): string {
  const [edge, y] = above ? [FACE_CELL.top, FACE_CELL.top - 3] : [FACE_CELL.foot, FACE_CELL.foot + 4.6];
  const outside = x(depth) > WIDTH / 2 - x(from) ? "left" : "right";
  return pen.across(x(from), x(depth), y, words, { from: edge, outside });
}

function edgeOf({ pen, x }: FaceCell, span: FaceSpan): string {
  const right = x(span.edge);
  return pen.segment(right, span.from, right, span.to, span.edge > 0 ? FOLDED : THIN);
}

/** Where one span is folded deeper than the other, the cut shows as its edge. */
function edgeBetween({ pen, x }: FaceCell, { edges }: FaceState): string {
  return edges[0] === edges[1] ? "" : pen.segment(x(edges[0]), FACE_CELL.middle, x(edges[1]), FACE_CELL.middle, THIN);
}

/** A score line over the spans that still lie flat there. */
function scoreAt({ pen, x }: FaceCell, { edges }: FaceState, depth: number): string {
  const { top, middle, foot } = FACE_CELL;
  const from = edges[0] < depth ? top : middle;
  const to = edges[1] < depth ? foot : middle;
  return from < to ? pen.segment(x(depth), from, x(depth), to, SCORE) : "";
}

/** From where the fore-edge was, over the fold, behind the leaf. */
function foldArrow({ pen, x }: FaceCell, span: FaceSpan): string {
  const y = (span.from + span.to) / 2;
  const start = Math.max(x(0) - 0.4, x(span.edge) + 7);
  return pen.arrow(start, y + 2, x(span.edge) + 0.8, y + 1, [(start + x(span.edge)) / 2, y - 4]);
}
