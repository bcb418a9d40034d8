import type { Kit } from "../../../core/kit/kit.ts";
import type { AnyPattern } from "../../../core/pattern/corner-pattern.ts";
import { toDegrees } from "../../../core/units/angle.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { num, text } from "../svg-text.ts";
import { wordsWidth } from "../words-width.ts";
import { type FanFromAbove, fanFromAbove } from "./fan-view.ts";
import { type At, diagram, TEXT, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

/** The opened book from above: hold width between the first and last picture leaf's folded edges, and the width at the boards. */
export function holdWidth(kit: Kit, pattern: AnyPattern): Figure {
  const { fit, book } = pattern;
  const width = formatByHand(fit.holdWidth, kit.units);
  const boardWidth = formatByHand(fit.boardWidth, kit.units);
  const label = say.drawHold({ width, first: fit.firstLeaf, last: fit.lastLeaf, boards: boardWidth });
  const scale = Math.min(68 / fit.boardWidth, 44 / book.leafWidth);
  const view = fanFromAbove(pattern, [40, 7], scale);
  const pen = penFor("ltr");
  const hold = straightAcross(pen, view, say.drawHoldWidth({ width }), [
    say.leafNumber({ leaf: fit.firstLeaf }),
    say.leafNumber({ leaf: fit.lastLeaf }),
  ]);
  const [one, other] = view.boards;
  const boards = Math.max(hold.foot, one[1], other[1]) + 6;
  return diagram(boards + 10, label, [
    view.svg,
    pen.words([40, 4], say.drawSpine(), { anchor: "middle" }),
    hold.svg,
    pen.across(one[0], other[0], boards, say.drawHoldBoards({ width: boardWidth }), {
      from: Math.max(one[1], other[1]),
    }),
    pen.arrow(40, boards + 9.4, 40, boards + 4.6),
    pen.words([42, boards + 8.4], say.drawLookFromHere()),
  ]);
}

/** Free space between the front tips and the dimension that runs along their chord. */
const FREE = 5;

/** Names of the two leaves run toward the middle, clear of the boards, where they have room and the dimension is about level. */
const INWARD = ["start", "end"] as const;
const ABOUT_LEVEL = 0.1;

/** The dimension between the two tips, on the viewer's side and parallel to the straight line between them. */
function straightAcross(
  pen: Pen,
  view: FanFromAbove,
  words: string,
  names: readonly [string, string],
): { svg: string; foot: number } {
  const leftToRight = view.first[0] <= view.last[0];
  const [a, b] = leftToRight ? [view.first, view.last] : [view.last, view.first];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const away = (at: At): number => -(at[0] - a[0]) * uy + (at[1] - a[1]) * ux;
  const offset = Math.max(0, ...view.tips.map(away)) + FREE;
  const from = (at: At, along: number, aside: number): At => [
    at[0] + ux * along - uy * aside,
    at[1] + uy * along + ux * aside,
  ];
  const ends = [from(a, 0, offset), from(b, 0, offset)] as const;
  const extension = (at: At): string => pen.line([from(at, 0, 0.7), from(at, 0, offset + 1)], THIN);
  const named = leftToRight ? names : ([names[1], names[0]] as const);
  const room = named.reduce((sum, name) => sum + wordsWidth(name, TEXT), 2) < length;
  const inside = room && Math.abs(uy) < ABOUT_LEVEL;
  const labels = ends.map((end, i) => from(end, inside ? [-1, 1][i]! : 0, 4.2));
  const svg = [
    pen.line(ends, THIN),
    ...[a, b].map((at) => extension(at) + pen.dot(at, 0.7, "#000")),
    ...ends.map((end) => pen.line([from(end, -1, 0), from(end, 1, 0)], THIN)),
    wordsAlong(from(ends[0], length / 2, -0.8), Math.atan2(uy, ux), words),
    ...labels.map((at, i) => pen.words(at, named[i]!, { anchor: inside ? INWARD[i]! : "middle" })),
  ];
  return { svg: svg.join(""), foot: Math.max(...labels.map(([, y]) => y)) };
}

function wordsAlong([x, y]: At, angle: number, words: string): string {
  const style = { "text-anchor": "middle" };
  const degrees = toDegrees(angle);
  return Math.abs(degrees) < 0.01
    ? text(x, y, words, style)
    : text(0, 0, words, { ...style, transform: `translate(${num(x)} ${num(y)}) rotate(${num(degrees)})` });
}
