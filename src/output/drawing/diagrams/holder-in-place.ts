import { leafTip } from "../../../core/fan/fan.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import type { Figure } from "../figure.ts";
import { type At, BOARD, CARD, diagram, FAINT, PAPER, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const HEAD = 27;
const FOOT = 50;

/** Height of the holder above the head edge from which its name stands on it. */
const ROOM_FOR_NAME = 5;

/** Leaves are drawn one in so many, so that they stay apart. */
const EVERY = 4;

/** The holder on the head edge, its slots over the first and the last picture leaf. Undefined without a window. */
export function holderInPlace(kit: Kit, pattern: Pattern): Figure | undefined {
  const holder = pattern.window?.holder;
  if (!holder) return undefined;
  const { fit, book } = pattern;
  const width = formatByHand(fit.holdWidth, kit.units);
  const ring = holder.outlines[0]!;
  const slots = holder.marks.map((mark) => mark.line);
  const middle = (slots[0]![0]![0] + slots[1]![0]![0]) / 2;
  const slotTop = Math.max(...slots[0]!.map(([, y]) => y));
  const scale = 70 / Math.max(fit.boardWidth, ...ring.map(([x]) => 2 * Math.abs(x - middle)));
  const place = ([x, y]: Point): At => [40 + (x - middle) * scale, HEAD + (y - slotTop) * scale];
  const top = place([0, 0])[1];
  const pen = penFor("ltr");
  const half = (fit.holdWidth / 2) * scale;
  const [left, right] = book.direction === "ltr" ? [fit.firstLeaf, fit.lastLeaf] : [fit.lastLeaf, fit.firstLeaf];
  return diagram(FOOT + 3, say.drawHolder({ first: fit.firstLeaf, last: fit.lastLeaf, width }), [
    bookFront(pattern, scale),
    pen.shape(ring.map(place), CARD),
    ...[-half, half].map((x) =>
      pen.leaf([
        [40 + x, HEAD],
        [40 + x, FOOT - 1],
      ]),
    ),
    pen.across(40 - half, 40 + half, 12.5, say.drawHoldWidth({ width }), { from: top - 0.6 }),
    pen.words([40, HEAD - top < ROOM_FOR_NAME ? top - 1.2 : top + 4], partName(holder), {
      anchor: "middle",
      bold: true,
    }),
    pen.words([1, 5], say.drawHolderSlot({ leaf: left })),
    slotLeader(pen, -half),
    pen.words([79, 5], say.drawHolderSlot({ leaf: right }), { anchor: "end" }),
    slotLeader(pen, half),
  ]);
}

/** From the words to the slot that stands `aside` from the middle. */
function slotLeader(pen: Pen, aside: number): string {
  const outside = 40 + aside + 5 * Math.sign(aside);
  return pen.leader([
    [outside, 6],
    [outside, HEAD - 2],
    [40 + aside, HEAD],
  ]);
}

/** The upper end of the book from the front: boards and the picture leaves' front edges where they stand. */
function bookFront(pattern: Pattern, scale: number): string {
  const { fit, book } = pattern;
  const fan = fanOf(pattern);
  const pen = penFor("ltr");
  const reach = (fit.boardWidth / 2) * scale;
  const inner = reach - book.boardThickness * scale - 1;
  const edges = Array.from({ length: Math.ceil(book.leaves / EVERY) }, (_, i) => {
    const x = 40 + leafTip(fan, i * EVERY, pattern.levels[0]!.depth).x * scale;
    return pen.segment(x, HEAD, x, FOOT, FAINT);
  });
  return [
    pen.box([40 - reach, HEAD - book.square * scale], [40 + reach, FOOT], BOARD, THIN),
    pen.box([40 - inner, HEAD], [40 + inner, FOOT], PAPER, THIN),
    ...edges,
  ].join("");
}
