import type { Kit } from "../../../core/kit/kit.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import * as say from "../../../words/messages.ts";
import { BOARD, CARD, GROUND, PAPER, THIN } from "./ink.ts";
import type { Pen } from "./pen.ts";

const TABLE = 67;
const BOOK_TOP = 54.5;
const SPINE = 41;
const REACH = 31;

/** The open book from the tail: turned leaves on one side, packing under the other. */
export function supportBelow(pen: Pen, kit: Kit, batch: Batch, packing: string): string {
  const board = 1;
  const full = TABLE - BOOK_TOP - board;
  const gone = Math.max(1.2, (full * (batch.first.leaf - 1)) / kit.book.leaves);
  const right = SPINE + REACH;
  const lifted = TABLE - gone;
  return [
    pen.segment(2, TABLE, 78, TABLE, THIN),
    pen.box([SPINE - REACH, TABLE - board], [SPINE - 0.3, TABLE], BOARD, THIN),
    pen.box([SPINE - REACH, TABLE - board - gone], [SPINE - 0.3, TABLE - board], PAPER, THIN),
    pen.box([SPINE + 0.3, lifted], [right, TABLE], GROUND, THIN),
    pen.box([SPINE + 0.3, lifted - board], [right, lifted], BOARD, THIN),
    pen.box([SPINE + 0.3, BOOK_TOP], [right, lifted - board], PAPER, THIN),
    pen.box([SPINE + 10, BOOK_TOP - 0.9], [right, BOOK_TOP], CARD),
    pen.words([SPINE - REACH, Math.min(BOOK_TOP + 2.4, TABLE - board - gone - 1)], say.drawScoringTurned()),
    pen.words([78, 71.2], say.drawScoringPacking({ packing, leaf: batch.first.leaf }), { anchor: "end", bold: true }),
    pen.leader([
      [right + 4, 68.4],
      [right + 4, lifted + gone / 2],
      [right - 2, lifted + gone / 2],
    ]),
    pen.words([78, 51.6], say.drawScoringLevelGauge(), { anchor: "end" }),
    pen.words([1, 71.2], say.drawScoringFromTail()),
  ].join("");
}
