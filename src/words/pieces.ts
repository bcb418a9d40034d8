import type { Piece, PieceSummary } from "../core/piece/piece.ts";
import { dayText } from "./dates.ts";
import * as say from "./messages.ts";

/** What a piece is called: its maker's word for it, or its number. */
export function pieceName({ name, number }: Pick<Piece, "name" | "number">): string {
  return name === "" ? say.pieceNumber({ number }) : name;
}

/** The day of an instant, where the reader is. */
export function dayOf(instant: string): string {
  const at = new Date(instant);
  const two = (figure: number): string => String(figure).padStart(2, "0");
  return dayText(`${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`);
}

/** How many leaves of a piece are folded. */
export function doneWords({ done, of }: PieceSummary): string {
  return of === undefined ? say.piecesDone({ count: done }) : say.piecesDoneOf({ count: done, of });
}
