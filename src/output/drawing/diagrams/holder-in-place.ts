import { leafTip } from "../../../core/fan/fan.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { type At, BOARD, CARD, CUT, diagram, EDGE_ON, FAINT, PAPER, THIN, torn } from "./ink.ts";
import { penFor } from "./pen.ts";

const HEAD = 27;
const FOOT = 50;

/** The holder on the head edge, its slots over the first and the last picture leaf. Undefined without a window. */
export function holderInPlace(kit: Kit, pattern: Pattern): Figure | undefined {
  const holder = pattern.insert?.parts.find((part) => part.name === "holder");
  if (!holder) return undefined;
  const { fit, book } = pattern;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const label = `The holder in place, seen from the front: the strip of card sits on the head edge, one slot over the first picture leaf, leaf ${fit.firstLeaf}, the other over the last, leaf ${fit.lastLeaf}, ${size(fit.edgeWidth)} apart. It stays there until all glue is dry.`;
  const ring = holder.outlines[0]!;
  const slots = holder.marks.map((mark) => mark.line);
  const middle = (slots[0]![0]![0] + slots[1]![0]![0]) / 2;
  const slotTop = Math.max(...slots[0]!.map(([, y]) => y));
  const scale = 70 / Math.max(fit.boardWidth, ...ring.map(([x]) => 2 * Math.abs(x - middle)));
  const place = ([x, y]: readonly [number, number]): At => [40 + (x - middle) * scale, HEAD + (y - slotTop) * scale];
  const pen = penFor("ltr");
  const half = (fit.edgeWidth / 2) * scale;
  const [left, right] = book.direction === "ltr" ? [fit.firstLeaf, fit.lastLeaf] : [fit.lastLeaf, fit.firstLeaf];
  return diagram(FOOT + 3, label, [
    bookFront(pattern, scale),
    pen.shape(ring.map(place), CARD, CUT),
    ...[-half, half].map((x) => pen.segment(40 + x, HEAD, 40 + x, FOOT - 1, EDGE_ON)),
    pen.across(40 - half, 40 + half, 12.5, `hold width ${size(fit.edgeWidth)}`, { from: place([0, 0])[1] - 0.6 }),
    pen.words([40, place([0, 0])[1] + 4], "holder", { anchor: "middle", bold: true }),
    pen.words([1, 5], `slot over leaf ${left}`),
    pen.leader([
      [40 - half - 5, 6],
      [40 - half - 5, HEAD - 2],
      [40 - half, HEAD],
    ]),
    pen.words([79, 5], `slot over leaf ${right}`, { anchor: "end" }),
    pen.leader([
      [40 + half + 5, 6],
      [40 + half + 5, HEAD - 2],
      [40 + half, HEAD],
    ]),
  ]);
}

/** The upper end of the book from the front: boards and the picture leaves' front edges where they stand. */
function bookFront(pattern: Pattern, scale: number): string {
  const { fit, book } = pattern;
  const fan = fanOf(pattern);
  const pen = penFor("ltr");
  const reach = (fit.boardWidth / 2) * scale;
  const leaves = Array.from({ length: book.leaves }, (_, j) => j).filter((j) => j % 4 === 0);
  const inner = reach - book.boardThickness * scale;
  return [
    pen.shape(
      [
        [40 - reach, HEAD - book.square * scale],
        [40 + reach, HEAD - book.square * scale],
        [40 + reach, FOOT],
        [40 - reach, FOOT],
      ],
      BOARD,
      THIN,
    ),
    pen.shape(
      [
        [40 - inner + 1, HEAD],
        [40 + inner - 1, HEAD],
        [40 + inner - 1, FOOT],
        [40 - inner + 1, FOOT],
      ],
      PAPER,
      THIN,
    ),
    ...leaves.map((j) =>
      pen.segment(
        40 + leafTip(fan, j, pattern.levels[0]!.depth).x * scale,
        HEAD,
        40 + leafTip(fan, j, pattern.levels[0]!.depth).x * scale,
        FOOT,
        FAINT,
      ),
    ),
    pen.shape([[82, FOOT - 0.7], ...torn(82, FOOT, FOOT + 6), ...torn(-2, FOOT + 6, FOOT)], "none", { stroke: "none" }),
  ].join("");
}
