import type { PatternBase, PatternLeafBase } from "../../../core/pattern/pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import type { Span } from "../../../core/spans/span.ts";
import { toDecimals } from "../../../core/units/length.ts";
import { boxPath, uprightPath } from "../path.ts";
import { shortUprights, type Upright } from "../short-path.ts";
import { num, tag } from "../svg-text.ts";
import { paperTone } from "./tone.ts";

/** The symbol's name in a packet's page. */
const SYMBOL = "front-in-small";

/** The width of the drawing, and how much of a column its neighbour laps over, so that no seam shows. */
export const WIDTH = 100;
const LAP = 1.2;

/** What of a pattern the front in small is drawn from; each leaf with its spans. */
export interface SmallFront extends Pick<PatternBase, "book" | "fit" | "merged"> {
  readonly levels: readonly unknown[];
  readonly leaves: readonly (Pick<PatternLeafBase, "leaf"> & { readonly spans: readonly Span[] })[];
}

/** The front in small as a symbol, to be drawn once and used beside each batch: a column for each folded leaf, its levels in the tones of the front. The level at the head is drawn once as the ground. Heights keep so many decimals. */
export function frontSymbol(front: SmallFront, decimals = 1): string {
  const { top, height } = pictureArea(front);
  const at = (mm: number): number => Math.min(top + height, Math.max(top, mm * scaleOf(front)));
  const ground = front.leaves[0]!.spans[0]!.level;
  const toneOf = (level: number): string => paperTone((level - 1) / Math.max(1, front.levels.length - 1), 0.98);
  const columns = (level: number): Upright[] =>
    front.leaves.flatMap(({ spans }, n) =>
      spans
        .filter((span) => span.level === level && at(span.to) > at(span.from))
        .map(({ from, to }): Upright => [toDecimals(middleOf(front, n), 1), at(from), at(to)]),
    );
  const drawn = front.levels.map((_, i) =>
    i + 1 === ground ? "" : tag("path", { d: shortUprights(columns(i + 1), decimals), stroke: toneOf(i + 1) }),
  );
  const area = tag("path", { d: boxPath(0, top, WIDTH, height), fill: toneOf(ground) });
  const look = { fill: "none", "stroke-width": pitchOf(front) * LAP };
  const symbol = tag("symbol", { id: SYMBOL, viewBox: areaOf(front) }, area + tag("g", look, drawn.join("")));
  return tag("svg", { class: "defs", "aria-hidden": "true" }, symbol);
}

/** The front in small with a batch framed and all others paled: "you are here". */
export function hereDrawing(
  front: SmallFront,
  { first, last }: Pick<Batch<PatternLeafBase>, "first" | "last">,
): string {
  const { top, height } = pictureArea(front);
  const columns = front.leaves.map(({ leaf }) => leaf);
  const { x, width } = columnsOf(front, columns.indexOf(first.leaf), columns.indexOf(last.leaf) + 1);
  const others = boxPath(0, top, x, height) + boxPath(x + width, top, WIDTH - x - width, height);
  return frontInSmall(front, [
    tag("path", { d: others, fill: "#fff", "fill-opacity": 0.6 }),
    tag("path", { d: boxPath(x, top + 1, width, height - 2), fill: "none", stroke: "#000", "stroke-width": 2 }),
  ]);
}

/** The front in small with a mark wherever strips were merged. */
export function mergedDrawing(front: SmallFront): string {
  const pitch = pitchOf(front);
  const columns = new Map(front.leaves.map(({ leaf }, n) => [leaf, n]));
  const d = front.merged.map(({ leaf, from, to }) =>
    uprightPath(
      [middleOf(front, columns.get(leaf)!), from * scaleOf(front)],
      Math.max(0.8, (to - from) * scaleOf(front)),
      1,
    ),
  );
  return frontInSmall(front, [tag("path", { d: d.join(""), stroke: "#000", "stroke-width": Math.max(0.5, pitch) })]);
}

/** The front in small with marks over it; `label` is what it shows in words, without one it is hidden from those who listen. */
export function frontInSmall(front: SmallFront, marks: readonly string[], label?: string): string {
  const told = label === undefined ? { "aria-hidden": "true" } : { role: "img", "aria-label": label };
  const { top: y, height } = pictureArea(front);
  const drawn = tag("use", { href: `#${SYMBOL}`, y, width: WIDTH, height }) + marks.join("");
  return tag("svg", { class: "here", viewBox: areaOf(front), ...told }, drawn);
}

/** The folded front from a little above the picture to a little below it. */
function areaOf(front: SmallFront): string {
  const { top, height } = pictureArea(front);
  return `0 ${num(top, 1)} ${WIDTH} ${num(height, 1)}`;
}

/** Where the columns of the folded leaves from the n-th up to before another stand: leaf 1 of a right-to-left book is at the right. */
export function columnsOf(front: SmallFront, from: number, to: number): { readonly x: number; readonly width: number } {
  const pitch = pitchOf(front);
  const first = front.book.direction === "ltr" ? from : front.leaves.length - to;
  return { x: first * pitch, width: (to - from) * pitch };
}

function middleOf(front: SmallFront, n: number): number {
  return columnsOf(front, n, n + 1).x + pitchOf(front) / 2;
}

/** Room above and below the picture, mm of the leaf. */
const ROOM = 6;

/** The drawing's heights. */
export function pictureArea(front: SmallFront): { readonly top: number; readonly height: number } {
  const { book, fit } = front;
  const from = Math.max(0, fit.head - ROOM);
  const to = Math.min(book.leafHeight, fit.head + fit.height + ROOM);
  return { top: from * scaleOf(front), height: (to - from) * scaleOf(front) };
}

function pitchOf({ leaves }: SmallFront): number {
  return WIDTH / leaves.length;
}

/** The drawing's unit in a millimetre of the leaf's height: the picture keeps its proportion. */
function scaleOf(front: SmallFront): number {
  const { firstLeaf, lastLeaf, width } = front.fit;
  return (pitchOf(front) * (lastLeaf - firstLeaf + 1)) / width;
}
