import type { Meeting } from "../../core/piece/meeting.ts";
import type { Piece } from "../../core/piece/piece.ts";
import * as say from "../../words/messages.ts";
import { dayOf, doneWords, pieceName } from "../../words/pieces.ts";

/** What becomes of a piece that file and device both have. */
export type Decision = "here" | "file" | "both";

/** Asks; a dialog that is closed keeps what is here. */
export function askMeeting({ file, here, kind }: Extract<Meeting, { here: Piece }>): Promise<Decision> {
  const dialog = document.querySelector<HTMLDialogElement>("[data-meeting]")!;
  const write = (name: string, words: string): void => {
    dialog.querySelector(`[data-meeting-${name}]`)!.textContent = words;
  };
  write("title", say.piecesMeetTitle({ piece: say.pieceOfKit({ title: here.title, piece: pieceName(here) }) }));
  write("why", kind === "older" ? say.piecesMeetOlder() : say.piecesMeetApart());
  write("here", say.piecesMeetHere({ what: stateOf(here) }));
  write("file", say.piecesMeetFile({ what: stateOf(file) }));
  dialog.returnValue = "here";
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => resolve(dialog.returnValue as Decision), { once: true });
    dialog.showModal();
  });
}

function stateOf({ summary, last }: Piece): string {
  return say.piecesMeetState({ done: doneWords(summary), day: dayOf(last) });
}
