import { PIECE_LENGTHS } from "../../core/piece/piece.ts";
import { part } from "../bench/bench-dom.ts";
import type { OpenedPiece } from "../bench/open-piece.ts";

/** Notes are kept this long after the last key, ms. */
const REST = 400;

/** Lets the maker write about the piece. */
export function bindNotes(root: HTMLElement, { desk, piece }: Pick<OpenedPiece, "desk" | "piece">): void {
  const field = part<HTMLTextAreaElement>(root, "notes");
  part(root, "notes-field").hidden = false;
  field.maxLength = PIECE_LENGTHS.notes;
  field.value = piece.now(desk).notes;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = (): void => {
    clearTimeout(timer);
    timer = undefined;
    void piece.write(desk, { notes: field.value });
  };
  field.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(keep, REST);
  });
  // A phone may close the page at once.
  addEventListener("pagehide", () => timer !== undefined && keep());
}
