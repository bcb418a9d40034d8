import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { Box } from "../../../core/geometry/box.ts";
import type { Point, Ring } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { PicturePlace } from "../../../core/makeability/picture-place.ts";
import { type Pattern, pictureLeaves } from "../../../core/pattern/pattern.ts";
import type { FigureArea } from "../figure.ts";
import { uprightPath } from "../path.ts";
import { shortRings, shortStrip } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { paperTone } from "../front/tone.ts";

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

/** What will be seen: each leaf's column with its strips as they are folded, in the paper's tones. */
export function seenLayer(pattern: Pattern, place: PicturePlace, area: FigureArea): string {
  const tone = toneOf(pattern.levels);
  const paths = pattern.levels.map(() => "");
  for (const { leaf, spans } of pictureLeaves(pattern)) {
    const { left, right } = place.column(leaf);
    for (const { from, to, level } of spans) paths[level - 1] += shortStrip([left, right], from, to);
  }
  const ground = tag("rect", { ...rectOf(area), fill: tone(pattern.background) });
  return ground + paths.map((d, k) => (d === "" ? "" : tag("path", { d, fill: tone(k + 1) }))).join("");
}

/** What is drawn, filled as its levels will look. */
export function filledLayer({ levels, picture }: Kit, place: PicturePlace, area: FigureArea): string {
  const tone = toneOf(levels);
  const shapes = picture.shapes.map(({ level, rule, rings }) =>
    tag("path", { d: shortRings(onFront(rings, picture, place)), fill: tone(level), "fill-rule": rule }),
  );
  const ground = tag("rect", { ...rectOf(area), fill: tone(picture.background) });
  return ground + clipped(place, shapes.join(""));
}

/** What is drawn, as outlines on tracing paper: they lie over what will be seen. */
export function tracedLayer({ picture }: Kit, place: PicturePlace): string {
  const d = picture.shapes.map(({ rings }) => shortRings(onFront(rings, picture, place))).join("");
  const pen = place.height / 360;
  const frame = { "stroke-dasharray": `${pen * 5} ${pen * 3}`, "stroke-width": pen };
  return (
    clipped(place, tag("path", { d, fill: "none", stroke: DRAWN, "stroke-width": pen * 1.6 })) +
    tag("rect", { ...placeRect(place), fill: "none", stroke: DRAWN, ...frame })
  );
}

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
  const d = shortRings(onFront(rings, picture, place));
  const pen = place.height / 150;
  return (
    tag("path", { d, fill: "#b5701c", "fill-opacity": "0.18", "fill-rule": "evenodd" }) +
    tag("path", { d, fill: "none", stroke: "#fff8e8", "stroke-width": pen * 1.5 }) +
    tag("path", { d, fill: "none", stroke: "#8f4d00", "stroke-width": pen * 0.8 })
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
  return [
    ((x - place.left) / place.width) * picture.width,
    ((y - place.top) / place.height) * picture.height,
  ];
}

function onFront(rings: readonly Ring[], picture: Kit["picture"], place: PicturePlace): Point[][] {
  const [across, down] = [place.width / picture.width, place.height / picture.height];
  return rings.map((ring) => ring.map(([x, y]) => [place.left + x * across, place.top + y * down]));
}

/** The levels in the paper's tones, the proudest lightest. */
function toneOf(levels: Kit["levels"]): (level: number) => string {
  const [front, deepest] = [levels[0]!.depth, levels.at(-1)!.depth];
  const tones = levels.map(({ depth }) => paperTone((depth - front) / Math.max(1e-9, deepest - front), 1));
  return (level) => tones[level - 1]!;
}

/** Shapes may reach beyond the picture's box, what is seen of them does not. */
function clipped(place: PicturePlace, drawn: string): string {
  const clip = tag("clipPath", { id: "sheet-picture" }, tag("rect", placeRect(place)));
  return tag("defs", {}, clip) + tag("g", { "clip-path": "url(#sheet-picture)" }, drawn);
}

function placeRect({ left, top, width, height }: PicturePlace): Readonly<Record<string, number>> {
  return { x: left, y: top, width, height };
}

function rectOf({ left, top, width, height }: FigureArea): Readonly<Record<string, number>> {
  return { x: left, y: top, width, height };
}
