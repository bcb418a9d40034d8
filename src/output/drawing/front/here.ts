import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import { escapeXml } from "../../xml.ts";
import { uprightPath } from "../path.ts";
import { num, tag } from "../svg-text.ts";
import { paperTone } from "./tone.ts";

/** The symbol's name in a packet's page. */
const SYMBOL = "front-in-small";

/** The width of the drawing, and how much of a column its neighbour laps over, so that no seam shows. */
export const WIDTH = 100;
const LAP = 1.2;

/** The front in small as a symbol, to be drawn once and used beside each batch: a column for each folded leaf, its levels in the tones of the front. */
export function frontSymbol(pattern: Pattern): string {
  const { top, height } = pictureArea(pattern);
  const at = (mm: number): number => Math.min(top + height, Math.max(top, mm * scaleOf(pattern)));
  const paths = pattern.levels.map((_, i) => {
    const d = pattern.leaves.flatMap((leaf, n) =>
      leaf.spans
        .filter((span) => span.level === i + 1 && at(span.to) > at(span.from))
        .map((span) => uprightPath([middleOf(pattern, n), at(span.from)], at(span.to) - at(span.from), 1)),
    );
    const share = i / Math.max(1, pattern.levels.length - 1);
    return d.length === 0
      ? ""
      : tag("path", {
          d: d.join(""),
          fill: "none",
          stroke: paperTone(share, 0.98),
          "stroke-width": num(pitchOf(pattern) * LAP),
        });
  });
  return `<svg class="defs" aria-hidden="true">${tag("symbol", { id: SYMBOL, viewBox: areaOf(pattern) }, paths.join(""))}</svg>`;
}

/** The front in small with a batch framed and all others paled: "you are here". */
export function hereDrawing(pattern: Pattern, { first, last }: Batch): string {
  const { top, height } = pictureArea(pattern);
  const columns = pattern.leaves.map(({ leaf }) => leaf);
  const { x, width } = columnsOf(pattern, columns.indexOf(first.leaf), columns.indexOf(last.leaf) + 1);
  const pale = { y: top, height, fill: "#fff", "fill-opacity": "0.6" };
  return frontInSmall(pattern, [
    tag("rect", { x: 0, width: x, ...pale }),
    tag("rect", { x: x + width, width: WIDTH - x - width, ...pale }),
    tag("rect", {
      x,
      y: top + 1,
      width,
      height: height - 2,
      fill: "none",
      stroke: "#000",
      "stroke-width": 2,
    }),
  ]);
}

/** The front in small with a mark wherever strips were merged. */
export function mergedDrawing(pattern: Pattern): string {
  const pitch = pitchOf(pattern);
  const columns = new Map(pattern.leaves.map(({ leaf }, n) => [leaf, n]));
  const d = pattern.merged.map(({ leaf, from, to }) =>
    uprightPath(
      [middleOf(pattern, columns.get(leaf)!), from * scaleOf(pattern)],
      Math.max(0.8, (to - from) * scaleOf(pattern)),
      1,
    ),
  );
  return frontInSmall(pattern, [tag("path", { d: d.join(""), stroke: "#000", "stroke-width": Math.max(0.5, pitch) })]);
}

/** The front in small with marks over it; `label` is what it shows in words, without one it is hidden from those who listen. */
export function frontInSmall(pattern: Pattern, marks: readonly string[], label?: string): string {
  const told = label === undefined ? `aria-hidden="true"` : `role="img" aria-label="${escapeXml(label)}"`;
  return `<svg class="here" viewBox="${areaOf(pattern)}" ${told}>${tag("use", { href: `#${SYMBOL}`, y: pictureArea(pattern).top, width: WIDTH, height: pictureArea(pattern).height })}${marks.join("")}</svg>`;
}

/** The folded front from a little above the picture to a little below it. */
function areaOf(pattern: Pattern): string {
  const { top, height } = pictureArea(pattern);
  return `0 ${num(top, 1)} ${WIDTH} ${num(height, 1)}`;
}

/** Where the columns of the folded leaves from the n-th up to before another stand: leaf 1 of a right-to-left book is at the right. */
export function columnsOf(pattern: Pattern, from: number, to: number): { readonly x: number; readonly width: number } {
  const pitch = pitchOf(pattern);
  const first = pattern.book.direction === "ltr" ? from : pattern.leaves.length - to;
  return { x: first * pitch, width: (to - from) * pitch };
}

function middleOf(pattern: Pattern, n: number): number {
  return columnsOf(pattern, n, n + 1).x + pitchOf(pattern) / 2;
}

/** Room above and below the picture, mm of the leaf. */
const ROOM = 6;

/** The drawing's heights. */
export function pictureArea(pattern: Pattern): { readonly top: number; readonly height: number } {
  const { book, fit } = pattern;
  const from = Math.max(0, fit.head - ROOM);
  const to = Math.min(book.leafHeight, fit.head + fit.height + ROOM);
  return { top: from * scaleOf(pattern), height: (to - from) * scaleOf(pattern) };
}

function pitchOf({ leaves }: Pattern): number {
  return WIDTH / leaves.length;
}

/** The drawing's unit in a millimetre of the leaf's height: the picture keeps its proportion. */
function scaleOf(pattern: Pattern): number {
  const { firstLeaf, lastLeaf, width } = pattern.fit;
  return (pitchOf(pattern) * (lastLeaf - firstLeaf + 1)) / width;
}
