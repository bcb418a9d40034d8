import { type Crease, flapOf, isTurned, type LeafPoint } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth, formatNumber } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { escapeXml } from "../../xml.ts";
import { bodyOf, cornersOf } from "../corner/leaf-shape.ts";
import { placeLabels } from "../label-places.ts";
import { linePath, ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import type { DrawingSpace } from "./edge-layout.ts";

/** Letters are this wide, as a share of their height, on the wide side. */
const LETTER = 0.56;
const SMALLEST = 16;
const LARGEST = 60;
/** From the fore-edge to the marks' figures, and free room about the leaf, px. */
const LEAD = 30;
const ROOM = 6;

/** Where things are, in pixels. */
interface CornerLayout {
  readonly scale: number;
  readonly top: number;
  readonly foot: number;
  /** The fore-edge, and the gutter. */
  readonly edge: number;
  readonly gutter: number;
  /** −1 where the fore-edge is at the right, as on the front of a leaf of a left-to-right book. */
  readonly inward: 1 | -1;
  /** Height of letters: of the marks, and of the small words beside the leaf. */
  readonly size: number;
  readonly word: number;
}

/** What is drawn of a leaf; `spoken` is all of it in words. */
export interface CornerOnBench {
  readonly leaf: CornerLeaf;
  readonly spoken: string;
}

/**
 * One leaf whole as it lies on the bench, to scale: marks on the fore-edge with their figures, creases dashed, the corners
 * that are folded over with a number in the order of the hands, where they come to lie, and heavy along the fore-edge what
 * stays. A leaf that is folded straight has its fold and its flap instead.
 */
export function cornerEdge(
  { leaf, spoken }: CornerOnBench,
  pattern: CornerPattern,
  style: LengthStyle,
  space: DrawingSpace,
): string {
  const layout = layCorner(leaf, pattern, style, space);
  const creases = creasesOf(leaf.fold);
  const parts = [
    whole(leaf, pattern, layout),
    leaf.fold.kind === "straight" ? straight(leaf.fold.depth, pattern, layout) : "",
    ...creases.map((crease) => landed(crease, layout)),
    ...creases.map((crease, i) => order(crease, i + 1, layout)),
    kept(leaf, pattern, layout),
    marks(leaf, style, layout),
    creases.length > 0 ? unitWord(style, layout, space.width) : "",
  ];
  const label = escapeXml(say.benchEdge({ leaf: spoken }));
  return `<svg xmlns="http://www.w3.org/2000/svg" class="edge-drawing" width="${num(space.width)}" height="${num(space.height)}" viewBox="0 0 ${num(space.width)} ${num(space.height)}" role="img" aria-label="${label}">${parts.join("")}</svg>`;
}

function layCorner(
  leaf: CornerLeaf,
  { book: { leafHeight, leafWidth, direction } }: CornerPattern,
  style: LengthStyle,
  space: DrawingSpace,
): CornerLayout {
  const word = clamp(space.width / 24, 14, 20);
  const tall = space.height - 2 * (word + 9);
  const letters = LETTER * Math.max(0, ...labelsOf(leaf, style).map(({ length }) => length));
  const lead = letters > 0 ? LEAD : 0;
  const free = space.width - lead - 2 * ROOM;
  const wide = Math.max(0.3 * free, free - (leafWidth * tall) / leafHeight);
  const size = clamp(Math.min(tall / 7, wide / Math.max(1, letters)), SMALLEST, LARGEST);
  const scale = Math.min(tall / leafHeight, (free - letters * size) / leafWidth);
  const left = (space.width - leafWidth * scale - lead - letters * size) / 2;
  const inward = direction === "ltr" ? -1 : 1;
  const gutter = inward === -1 ? left : space.width - left;
  const top = (space.height - leafHeight * scale) / 2;
  const edge = gutter - inward * leafWidth * scale;
  return { scale, top, foot: top + leafHeight * scale, edge, gutter, inward, size, word };
}

/** Pixels of a place on the leaf. */
function at({ edge, top, inward, scale }: CornerLayout, point: LeafPoint): Point {
  return [edge + inward * point.depth * scale, top + point.at * scale];
}

/** The leaf before it is folded, with the corners that go. */
function whole(leaf: CornerLeaf, pattern: CornerPattern, layout: CornerLayout): string {
  const { edge, gutter, top, foot } = layout;
  const ring = (points: readonly LeafPoint[]): string => ringPath(points.map((point) => at(layout, point)));
  const middle = (edge + gutter) / 2;
  const name = { class: "edge-word", "text-anchor": "middle", "font-size": layout.word };
  return [
    ...cornersOf(leaf.fold).map((corner) => tag("path", { class: "edge-gone", d: ring(corner) })),
    tag("path", { class: "edge-body", d: ring(bodyOf(creasesOf(leaf.fold), pattern)) }),
    text(middle, top - 7, say.benchEdgeHead(), name),
    text(middle, foot + layout.word, say.benchEdgeTail(), name),
  ].join("");
}

/** A leaf that is folded over the card: what goes, the fold, and where its strip comes to lie. */
function straight(depth: number, { book: { leafHeight } }: CornerPattern, layout: CornerLayout): string {
  const strip = (from: number, to: number): string =>
    ringPath(
      [
        { at: 0, depth: from },
        { at: 0, depth: to },
        { at: leafHeight, depth: to },
        { at: leafHeight, depth: from },
      ].map((point) => at(layout, point)),
    );
  const fold = linePath([at(layout, { at: 0, depth }), at(layout, { at: leafHeight, depth })]);
  return [
    tag("path", { class: "edge-gone", d: strip(0, depth) }),
    tag("path", { class: "edge-corner", d: strip(depth, 2 * depth) }),
    tag("path", { class: "edge-fold", d: fold }),
  ].join("");
}

/** A crease, and its corner as it comes to lie on the leaf. */
function landed(crease: Crease, layout: CornerLayout): string {
  const flap = flapOf(crease).map((point) => at(layout, point));
  return (
    tag("path", { class: "edge-corner", d: ringPath(flap) }) +
    tag("path", { class: "edge-fold", fill: "none", d: linePath([at(layout, crease.from), at(layout, crease.to)]) })
  );
}

/** The order of the hands, in the corner that goes. */
function order({ from, to }: Crease, number: number, layout: CornerLayout): string {
  const share = 0.3;
  const [x, y] = at(layout, { at: to.at + share * (from.at - to.at), depth: share * to.depth });
  const room = (Math.min(Math.abs(from.at - to.at), to.depth) * layout.scale) / 4;
  const radius = clamp(room, 8, 20);
  return (
    tag("circle", { class: "edge-order", cx: x, cy: y, r: radius }) +
    text(x, y + radius * 0.42, String(number), {
      class: "edge-order-number",
      "text-anchor": "middle",
      "font-size": radius * 1.25,
    })
  );
}

/** What stays of the fore-edge. */
function kept({ fold }: CornerLeaf, { book }: CornerPattern, layout: CornerLayout): string {
  if (fold.kind !== "corners") return "";
  const { from, to } = fold.shown;
  const ends = [from, Math.min(to, book.leafHeight)].map((height) => at(layout, { at: height, depth: 0 }));
  const words = say.drawCornerStays();
  const long = (to - from) * layout.scale;
  const size = Math.min(layout.word, sizeWithin(long - 8, words, layout.word));
  const [x, y] = at(layout, { at: (from + to) / 2, depth: 0 });
  const aside = x + layout.inward * size * 0.9 + size * 0.35;
  const transform = `translate(${num(aside)} ${num(y)}) rotate(-90)`;
  return (
    tag("path", { class: "edge-kept", d: linePath(ends) }) +
    (size < 11 ? "" : text(0, 0, words, { class: "edge-stays", "text-anchor": "middle", "font-size": size, transform }))
  );
}

/** Each mark as a line across the fore-edge, with its figure; where a crease is steeper, also where it ends. */
function marks(leaf: CornerLeaf, style: LengthStyle, layout: CornerLayout): string {
  const heights = marksOf(leaf).map((mark) => at(layout, { at: mark, depth: 0 })[1]);
  const { size, edge, inward } = layout;
  const places = placeLabels(heights, size * 1.1, layout.top + size * 0.2, layout.foot - size * 0.2);
  const away = -inward;
  return labelsOf(leaf, style)
    .map((words, i) => {
      const [x, y] = [edge + away * LEAD, places[i]!];
      const lead = linePath([
        [edge + away * 8, heights[i]!],
        [x - away * 5, y],
      ]);
      const label = { class: "edge-label", x, y: y + size * 0.35, "font-size": size };
      const cut = { class: "edge-cut", x1: edge - away * 8, y1: heights[i]!, x2: edge + away * 8, y2: heights[i]! };
      return (
        tag("line", cut) +
        tag("path", { class: "edge-lead", d: lead }) +
        tag(
          "text",
          { ...label, "text-anchor": away === 1 ? "start" : "end" },
          `<tspan class="edge-at">${escapeXml(words)}</tspan>`,
        )
      );
    })
    .join("");
}

/** Heights of the marks, each once. */
function marksOf({ fold }: CornerLeaf): number[] {
  return [...new Set(creasesOf(fold).map(({ from }) => from.at))];
}

/** The marks' figures, with the end of a crease that is steeper than 45°. */
function labelsOf(leaf: CornerLeaf, style: LengthStyle): string[] {
  return marksOf(leaf).map((mark) => {
    const turned = creasesOf(leaf.fold).filter((crease) => crease.from.at === mark && isTurned(crease));
    const ends = turned.map(({ to }) => say.cornerCreaseEnd({ end: formatDepth(to.depth, style.units) }));
    return [formatNumber(mark, style), ...ends].join(" ");
  });
}

function unitWord({ units }: LengthStyle, layout: CornerLayout, width: number): string {
  const away = -layout.inward;
  const x = layout.edge + away * ROOM;
  const words = say.benchCornerMarks({ units });
  return text(x, layout.top - 7, words, {
    class: "edge-word",
    "text-anchor": away === 1 ? "start" : "end",
    "font-size": sizeWithin(away === 1 ? width - x : x, words, layout.word),
  });
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
