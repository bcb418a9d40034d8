import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { Box } from "../../../core/geometry/box.ts";
import type { FillRule, Point, Ring } from "../../../core/geometry/point.ts";
import { oncePer } from "../../../core/kept-with.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { PicturePlace } from "../../../core/makeability/picture-place.ts";
import { type Pattern, type PatternLeaf, pictureLeaves } from "../../../core/pattern/pattern.ts";
import type { LevelMap } from "../../../core/picture/level-map.ts";
import type { FigureArea } from "../figure.ts";
import { levelTones } from "../front/tone.ts";
import { uprightPath } from "../path.ts";
import { shortRings } from "../short-path.ts";
import { num, tag } from "../svg-text.ts";

/** Ink of what is drawn, laid over what will be seen. */
const DRAWN = "#12525c";

/** Room beside the picture, a share of its width, and at least so much, mm. */
const BESIDE = { share: 0.06, least: 6 } as const;

/** Every so many leaves a line is stronger: the checkpoints of the work. */
const STRONG = 10;

/** What the sheet shows: the picture with some room at its sides, from head to tail of the leaves. Lengths mm, as `PicturePlace` has them. */
export function sheetArea({ book }: Pick<Kit, "book">, place: PicturePlace): FigureArea {
  const beside = Math.max(BESIDE.least, BESIDE.share * place.width);
  return { left: place.left - beside, top: 0, width: place.width + 2 * beside, height: book.leafHeight };
}

/**
 * What will be seen: each strip where its folded edge stands, seen from the front, prouder ones over deeper ones, in the paper's
 * tones. A strip reaches half-way to the tips of its neighbours at its level. Walking round, strips stand in their leaf's column.
 */
export function seenLayer(pattern: Pattern, place: PicturePlace, area: FigureArea): string {
  const tone = levelTones(pattern.levels);
  const leaves = pattern.fit.view === "along" ? pictureLeaves(pattern) : pattern.leaves;
  const paths = pattern.levels.map((_, k) => {
    const sides = pattern.fit.view === "along" ? columnsOf(leaves, place) : cellsOf(leaves, k);
    return leaves.flatMap(({ spans }, i) =>
      spans.flatMap(({ from, to, level }) => (level === k + 1 ? [strip(sides[i]!, from, to)] : [])),
    );
  });
  const ground = tag("rect", { ...rectOf(area), fill: tone(pattern.background) });
  const strips = paths.map((d, k) => (d.length === 0 ? "" : tag("path", { d: d.join(""), fill: tone(k + 1) })));
  return ground + strips.toReversed().join("");
}

/** Path data of an upright strip, to 0.01 across and 0.1 down. A thousand are written for each step of a handle, so in plain numbers. */
function strip([left, right]: readonly [number, number], from: number, to: number): string {
  const x = Math.min(left, right);
  const width = fine(Math.abs(right - left), 100);
  return `M${fine(x, 100)} ${fine(from, 10)}h${width}V${fine(to, 10)}h-${width}z`;
}

function fine(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}

/** How much a strip laps over its neighbours, mm, so that nothing shows between them. */
const LAP = 0.04;

/** Left and right side of each leaf's strips at a level (from 0). */
function cellsOf(leaves: readonly PatternLeaf[], level: number): (readonly [number, number])[] {
  const xs = leaves.map(({ x }) => x[level]!);
  return xs.map((x, i) => {
    const before = i > 0 ? (x - xs[i - 1]!) / 2 : (xs[1]! - x) / 2;
    const after = i + 1 < xs.length ? (xs[i + 1]! - x) / 2 : before;
    const lap = LAP * Math.sign(before);
    return [x - before - lap, x + after + lap];
  });
}

function columnsOf(leaves: readonly PatternLeaf[], place: PicturePlace): (readonly [number, number])[] {
  return leaves.map(({ leaf }) => {
    const { left, right } = place.column(leaf);
    return [left, right];
  });
}

/** What is drawn, filled as its levels will look. */
export function filledLayer({ levels, picture }: Kit, place: PicturePlace, area: FigureArea): string {
  const tone = levelTones(levels);
  const shapes = outlinesOf(picture).map(({ level, rule, d }) =>
    tag("path", { d, fill: tone(level), "fill-rule": rule }),
  );
  const ground = tag("rect", { ...rectOf(area), fill: tone(picture.background) });
  return ground + onFront(picture, place, shapes.join(""));
}

/** What is drawn, as outlines on tracing paper: they lie over what will be seen. */
export function tracedLayer({ picture }: Kit, place: PicturePlace): string {
  const d = outlinesOf(picture)
    .map((shape) => shape.d)
    .join("");
  const pen = place.height / 360;
  const frame = { "stroke-dasharray": `${num(pen * 5)} ${num(pen * 3)}`, "stroke-width": pen };
  return (
    onFront(picture, place, tag("path", { d, fill: "none", stroke: DRAWN, "stroke-width": TRACED, ...EVEN })) +
    tag("rect", { ...placeRect(place), fill: "none", stroke: DRAWN, ...frame })
  );
}

/** A stroke as wide on the screen wherever the drawing is put, and its width there, pixels. */
const EVEN = { "vector-effect": "non-scaling-stroke" } as const;
const TRACED = 1.6;

/** The lines of the leaves, those at each tenth stronger. */
export function leafLines(pattern: Pattern, place: PicturePlace, { top, height }: FigureArea): string {
  const lines = { thin: "", strong: "" };
  for (const [i, { leaf }] of pictureLeaves(pattern).entries())
    lines[i % STRONG === 0 ? "strong" : "thin"] += uprightPath([place.column(leaf).left, top], height);
  const look = { fill: "none", stroke: "#3b2a16" };
  return (
    tag("path", { d: lines.thin, ...look, "stroke-opacity": "0.16", "stroke-width": 0.12 }) +
    tag("path", { d: lines.strong, ...look, "stroke-opacity": "0.42", "stroke-width": 0.2 })
  );
}

/** The column of the leaf that lies beside the sheet. */
export function leafMark(leaf: LeafNumber, place: PicturePlace, { top, height }: FigureArea): string {
  const { left, right } = place.column(leaf);
  const [from, to] = [Math.min(left, right), Math.max(left, right)];
  const middle = (from + to) / 2;
  const width = Math.max(to - from, 0.9);
  return (
    tag("rect", { x: middle - width / 2, y: top, width, height, fill: "#b5701c", "fill-opacity": "0.5" }) +
    tag("path", { d: uprightPath([middle, top], height), stroke: "#7a4508", "stroke-width": 0.35, fill: "none" })
  );
}

/** Outlines of one shape, as it was picked. `rings` are in the picture's units. */
export function pickedMark(rings: readonly Ring[], { picture }: Kit, place: PicturePlace): string {
  const d = shortRings(rings, DIGITS);
  return onFront(
    picture,
    place,
    tag("path", { d, fill: "#b5701c", "fill-opacity": "0.18", "fill-rule": "evenodd" }) +
      tag("path", { d, fill: "none", stroke: "#fff8e8", "stroke-width": 5, ...EVEN }) +
      tag("path", { d, fill: "none", stroke: "#8f4d00", "stroke-width": 2.5, ...EVEN }),
  );
}

/** A ring round a place that is being looked at. */
export function lookedAtMark({ left, right, top, bottom }: Box, size: number): string {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const [rx, ry] = [(right - left) / 2 + size / 40, (bottom - top) / 2 + size / 40];
  const round = { cx: x, cy: y, rx, ry, fill: "none" };
  return (
    tag("ellipse", { ...round, stroke: "#fff8e8", "stroke-width": size / 80 }) +
    tag("ellipse", { ...round, stroke: "#a3271f", "stroke-width": size / 160 })
  );
}

/** Where a place on the front lies in the picture, in its units; outside the picture, too. */
export function inPicture([x, y]: Point, { picture }: Pick<Kit, "picture">, place: PicturePlace): Point {
  return [((x - place.left) / place.width) * picture.width, ((y - place.top) / place.height) * picture.height];
}

/** Decimals of the picture's own units that are told apart on a screen. */
const DIGITS = 3;

/** A shape of a picture as path data in its own units. */
interface Outlined {
  readonly level: number;
  readonly rule: FillRule;
  readonly d: string;
}

/** The outlines of a picture as path data, written once for each picture: another place on the front only moves them. */
const outlinesOf = oncePer((picture: LevelMap): readonly Outlined[] =>
  picture.shapes.map(({ level, rule, rings }) => ({ level, rule, d: shortRings(rings, DIGITS) })),
);

/** Puts what is drawn in the picture's units in its place on the front; shapes may reach beyond the picture's box, what is seen of them does not. */
function onFront({ width, height }: LevelMap, place: PicturePlace, drawn: string): string {
  const clip = tag("clipPath", { id: "sheet-picture" }, tag("rect", { x: 0, y: 0, width, height }));
  const move = `translate(${num(place.left, 4)} ${num(place.top, 4)}) scale(${num(place.width / width, 6)} ${num(place.height / height, 6)})`;
  return tag("g", { transform: move, "clip-path": "url(#sheet-picture)" }, tag("defs", {}, clip) + drawn);
}

function placeRect({ left, top, width, height }: PicturePlace): Readonly<Record<string, number>> {
  return { x: left, y: top, width, height };
}

function rectOf({ left, top, width, height }: FigureArea): Readonly<Record<string, number>> {
  return { x: left, y: top, width, height };
}
