import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { type Pattern, type PatternLeaf, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { type GluedTack, tackList } from "../../../core/plan/tack-list.ts";
import type { Span } from "../../../core/spans/span.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { depthOf } from "./example-leaf.ts";
import { diagram, GLUE, SMALL, WIDTH } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";
import { foldedLayers, layersBehind, paperLine } from "./section.ts";

/** Two leaves at one height, folded at these levels; without a level there is no next leaf. */
interface Pair {
  readonly leaf: LeafNumber;
  readonly level: number;
  readonly nextLevel: number | undefined;
}

const EDGE = 66;
const TORN = 16;
const LAYER = 2;
const BODY = 13;

/** A flap behind its leaf: held by the next leaf's body, or loose where that is folded deeper, and then glued. */
export function tucking(kit: Kit, pattern: Pattern): Figure {
  const held = heldPair(pattern);
  const loose = loosePair(pattern);
  const pairs = loose ? [held, loose] : [held];
  const scale = (EDGE - TORN - 3) / Math.max(...pairs.map((pair) => reachOf(pattern, pair)));
  const tops = pairs.map((_, i) => pairs.slice(0, i).reduce((top, pair) => top + rowHeight(pattern, pair), 0));
  const foot = pairs.reduce((top, pair) => top + rowHeight(pattern, pair), 0);
  const size = (mm: number): string => formatSize(mm, kit.units);
  const heldText = say.drawTucking({ leaf: held.leaf, depth: size(depthOf(pattern, held.level)) });
  const label = `${heldText} ${loose ? looseText(pattern, loose, size) : say.drawTuckingAllHeld()}`;
  return diagram(foot + 4, label, [
    ...pairs.map((pair, i) => row(kit, pattern, pair, { top: tops[i]!, scale })),
    penFor("ltr").words([0, foot + 1.5], say.drawTuckingFoot(), { size: SMALL }),
  ]);
}

/** Two picture leaves in a row that begin at one level at the head. */
function heldPair(pattern: Pattern): Pair {
  const leaves = pictureLeaves(pattern);
  const first =
    leaves.find(
      (leaf, i) => leaves[i + 1]?.leaf === leaf.leaf + 1 && leaves[i + 1]!.spans[0]!.level === leaf.spans[0]!.level,
    ) ?? leaves[0]!;
  const level = first.spans[0]!.level;
  return { leaf: first.leaf, level, nextLevel: level };
}

/** The kit's first tack whose next leaf is folded deeper, or else its first. */
function loosePair(pattern: Pattern): Pair | undefined {
  const pairs = tackList(pattern).glued.map((tack) => pairOf(pattern, tack));
  return pairs.find((pair) => pair.nextLevel !== undefined) ?? pairs[0];
}

function pairOf(pattern: Pattern, tack: GluedTack): Pair {
  const middle = (tack.from + tack.to) / 2;
  const at = (leaf: PatternLeaf | undefined): Span | undefined =>
    leaf?.spans.find((span) => middle >= span.from && middle < span.to);
  const next = pattern.leaves.find((leaf) => leaf.leaf > tack.leaf.leaf);
  return { leaf: tack.leaf.leaf, level: at(tack.leaf)!.level, nextLevel: at(next)?.level };
}

/** How much of the flap the next leaf leaves loose, mm. */
function looseOf(pattern: Pattern, { level, nextLevel }: Pair): number {
  const depth = depthOf(pattern, level);
  return nextLevel === undefined ? depth : Math.max(0, Math.min(depth, depthOf(pattern, nextLevel) - depth));
}

function looseText(pattern: Pattern, pair: Pair, size: (mm: number) => string): string {
  const figures = { leaf: pair.leaf, depth: size(depthOf(pattern, pair.level)) };
  if (pair.nextLevel === undefined) return say.drawTuckingLast(figures);
  const next = size(depthOf(pattern, pair.nextLevel));
  return say.drawTuckingDeeper({ ...figures, next, loose: size(looseOf(pattern, pair)) });
}

function layersFor(pattern: Pattern, level: number, gutter: number): ReturnType<typeof foldedLayers> {
  return foldedLayers(depthOf(pattern, level), depthOf(pattern, 1), pattern.fit.foldStyle, gutter);
}

/** The farthest that paper of a pair reaches from the fore-edge, mm. */
function reachOf(pattern: Pattern, pair: Pair): number {
  const levels = [pair.level, ...(pair.nextLevel === undefined ? [] : [pair.nextLevel])];
  return Math.max(...levels.map((level) => 2 * depthOf(pattern, level)));
}

/** Heights of the next leaf and of the lowest layer in a row. */
function heightsOf(pattern: Pattern, pair: Pair): { next: number; lowest: number } {
  const behind = (level: number): number => layersBehind(layersFor(pattern, level, 0)) * LAYER;
  const next = BODY + behind(pair.level) + LAYER;
  return { next, lowest: pair.nextLevel === undefined ? next - LAYER : next + behind(pair.nextLevel) };
}

function rowHeight(pattern: Pattern, pair: Pair): number {
  return heightsOf(pattern, pair).lowest + (looseOf(pattern, pair) > 0 ? 9 : 5);
}

function row(kit: Kit, pattern: Pattern, pair: Pair, { top, scale }: { top: number; scale: number }): string {
  const pen = penFor(kit.book.direction, { left: 0, top, width: WIDTH });
  const x = (depth: number): number => EDGE - depth * scale;
  const folded = (level: number, y: number, next: boolean): string =>
    paperLine(
      layersFor(pattern, level, (EDGE - TORN) / scale),
      (mm, layer) => pen.place([x(mm), y + layer * LAYER]),
      next,
    );
  const { next, lowest } = heightsOf(pattern, pair);
  const loose = looseOf(pattern, pair);
  const depth = depthOf(pattern, pair.level);
  const beside = { anchor: "end" } as const;
  return [
    penFor("ltr", { left: 0, top, width: WIDTH }).words([0, 4], titleOf(pair, loose), { bold: true, size: 3.3 }),
    ...(pair.nextLevel === undefined
      ? []
      : [folded(pair.nextLevel, next, true), pen.words([TORN - 1.2, next + 1], say.drawNextLeaf(), beside)]),
    folded(pair.level, BODY, false),
    pen.words([TORN - 1.2, BODY + 1], say.leafNumber({ leaf: pair.leaf }), beside),
    pen.words([x(depth) + 5.4, BODY + 1.4], say.drawFlap()),
    pen.leader([
      [x(depth) + 5, BODY + 0.6],
      [x(depth) - 0.8, BODY + LAYER],
    ]),
    loose > 0 ? looseFlap(pen, x(depth + loose), x(depth), lowest + 5, formatSize(loose, kit.units)) : "",
  ].join("");
}

function titleOf(pair: Pair, loose: number): string {
  if (loose === 0) return say.drawTuckingHeldTitle();
  return pair.nextLevel === undefined ? say.drawTuckingLastTitle() : say.drawTuckingDeeperTitle();
}

/** How much of the flap is loose, with a dot of glue between it and the leaf. */
function looseFlap(pen: Pen, from: number, to: number, y: number, width: string): string {
  const style = { from: BODY + LAYER, outside: "right" } as const;
  return glue(pen, (from + to) / 2) + pen.across(from, to, y, say.drawTuckingLoose({ width }), style);
}

/** A dot of glue between the leaf and the part of the flap that is loose. */
function glue(pen: Pen, at: number): string {
  return [
    pen.dot([at, BODY + LAYER / 2], 0.95, GLUE),
    pen.words([at, BODY - 3.4], say.drawDotOfGlue(), { anchor: "middle" }),
    pen.leader([
      [at, BODY - 2.8],
      [at, BODY + LAYER / 2],
    ]),
  ].join("");
}
