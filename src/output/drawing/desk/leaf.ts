import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { depthsOf, type Pattern } from "../../../core/pattern/pattern.ts";
import { flapReach } from "../../../core/spans/fold-style.ts";
import type { Span } from "../../../core/spans/span.ts";
import type { FigureArea } from "../figure.ts";
import { levelTones } from "../front/tone.ts";
import { lineLook } from "../line-kinds.ts";
import { boxPath, levelPath, uprightPath } from "../path.ts";
import { tag, text } from "../svg-text.ts";

/** Letters and rings, mm on a leaf of this height; they grow with it. */
const TALL = 216;

/** How the lines of a drawing to print look on the desk, where a millimetre is a few pixels. */
const LINES = 1.2;

/** The leaf lies open on the table: gutter at one side, the fore-edge at the other, where the book's leaves turn. Lengths mm. */
export function leafArea({ book }: Pick<Kit, "book">): FigureArea {
  return { left: 0, top: 0, width: book.leafWidth, height: book.leafHeight };
}

/** Where a depth from the fore-edge is on the drawn leaf, mm from its left side. */
export function acrossLeaf({ leafWidth, direction }: Kit["book"], depth: number): number {
  return direction === "ltr" ? leafWidth - depth : depth;
}

/** One leaf from its side: each strip as far as it is folded, the flap behind it, cuts, score lines, and its notch. */
export function leafDrawing(kit: Kit, pattern: Pattern, leaf: LeafNumber): string {
  const { book } = kit;
  const folded = pattern.leaves.find((one) => one.leaf === leaf);
  const spans = folded?.spans ?? [];
  const depths = depthsOf(kit.levels);
  const toneOf = levelTones(kit.levels);
  const box = (nearer: number, deeper: number, from: number, to: number): string => {
    const [a, b] = [acrossLeaf(book, nearer), acrossLeaf(book, deeper)];
    return boxPath(Math.min(a, b), from, Math.abs(a - b), to - from);
  };
  const whole = tag("path", {
    d: box(0, book.leafWidth, 0, book.leafHeight),
    fill: spans.length > 0 ? "#f7f0df" : "#fdf7e8",
    stroke: "#8a7656",
    "stroke-width": 0.3,
    "stroke-dasharray": spans.length > 0 ? "1.4 1.2" : undefined,
  });
  const strips = spans.map(({ from, to, level }) =>
    tag("path", { d: box(depths[level - 1]!, book.leafWidth, from, to), fill: toneOf(level) }),
  );
  const flaps = spans.map(({ from, to, level }) => {
    const depth = depths[level - 1]!;
    return box(depth, Math.min(book.leafWidth, flapReach(kit.fit.foldStyle, depths, level)), from, to);
  });
  const cuts = (folded?.cuts ?? []).map(({ at, depth }) => {
    const [edge, end] = [acrossLeaf(book, 0), acrossLeaf(book, depth)];
    return levelPath([Math.min(edge, end), at], Math.abs(edge - end));
  });
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf);
  return [
    whole,
    ...strips,
    tag("path", { d: flaps.join(""), fill: "#5d4426", "fill-opacity": "0.13" }),
    notch ? tag("path", { d: box(0, notch.depth, notch.from, notch.to), fill: "#2a2119", "fill-opacity": "0.82" }) : "",
    scores(kit),
    tag("path", { d: cuts.join(""), ...lineLook("cut", LINES) }),
    ...numbers(kit, spans, depths),
  ].join("");
}

function scores({ book, levels }: Kit): string {
  const d = levels.map(({ depth }) => uprightPath([acrossLeaf(book, depth), 0], book.leafHeight)).join("");
  return tag("path", { d, ...lineLook("score", LINES) });
}

/** The number of its level in a ring on each strip that has room for it. */
function numbers({ book }: Kit, spans: readonly Span[], depths: readonly number[]): string[] {
  const radius = (4.2 * book.leafHeight) / TALL;
  const inward = book.direction === "ltr" ? -1 : 1;
  return spans
    .filter(({ from, to }) => to - from >= 2.2 * radius)
    .map(({ from, to, level }) => {
      const [x, y] = [acrossLeaf(book, depths[level - 1]!) + inward * 1.6 * radius, (from + to) / 2];
      return (
        tag("circle", { cx: x, cy: y, r: radius, fill: "#fffdf8", stroke: "#000", "stroke-width": 0.3 }) +
        text(x, y + 0.36 * 1.25 * radius, String(level), {
          "font-size": 1.25 * radius,
          "font-weight": 600,
          "text-anchor": "middle",
        })
      );
    });
}
