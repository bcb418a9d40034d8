import { keepHere, meet, takeBeside, takeFile, takeUnknown } from "../../core/piece/meeting.ts";
import type { Piece } from "../../core/piece/piece.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { progressFailure } from "../../words/progress.ts";
import { askMeeting } from "./ask-meeting.ts";
import { deviceName, freshId } from "./device.ts";
import type { PieceStore } from "./piece-store.ts";
import { readFile } from "./read-file.ts";

/** A file of pieces is never larger, MB: 500 pieces of some hundred leaves. */
const MOST_MEGABYTES = 20;

/** What became of a file's pieces. */
type Taken = "added" | "updated" | "left";

/** Takes the pieces of a file, and asks before anything that was done here since would be undone. Gives back what to say of it. */
export async function importPieces(
  store: PieceStore,
  file: File,
  titles: Readonly<Record<string, string>>,
): Promise<string> {
  const refused = (why: string): string => say.piecesRefused({ file: file.name, why });
  if (file.size > MOST_MEGABYTES * 1e6) return refused(say.piecesTooLarge({ most: MOST_MEGABYTES }));
  const read = readFile(await file.text(), titles);
  if ("failure" in read) return refused(progressFailure(read.failure));
  const taken: Taken[] = [];
  for (const piece of read.pieces) taken.push(await takePiece(store, piece));
  const count = (kind: Taken): number => taken.filter((one) => one === kind).length;
  const what = [
    ...(count("added") > 0 ? [say.piecesAdded({ count: count("added") })] : []),
    ...(count("updated") > 0 ? [say.piecesUpdated({ count: count("updated") })] : []),
    ...(count("left") > 0 || taken.length === 0 ? [say.piecesLeft({ count: count("left") })] : []),
  ];
  const told = say.piecesOpened({ file: file.name, what: listText(what) });
  return store.base ? told : `${told} ${say.piecesNotKept()}`;
}

async function takePiece(store: PieceStore, file: Piece): Promise<Taken> {
  const { pieces } = await store.all();
  const device = deviceName();
  const met = meet(pieces, file);
  switch (met.kind) {
    case "unknown":
      await store.keep(takeUnknown(pieces, file));
      return "added";
    case "newer":
      await store.keep({ ...file, number: met.here.number });
      return "updated";
    case "same":
      return "left";
  }
  switch (await askMeeting(met)) {
    case "file":
      await store.keep(takeFile(met, { device }));
      return "updated";
    case "both":
      await store.keep(takeBeside(pieces, file, { id: freshId(), device }));
      return "added";
    default:
      await store.keep(keepHere(met, { device }));
      return "left";
  }
}
