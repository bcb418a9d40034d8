import type { Progress } from "../../core/bench/progress.ts";
import type { ProgressFailure } from "../../core/bench/progress-failure.ts";
import { nextNumber, type Piece } from "../../core/piece/piece.ts";
import { countChange } from "../../core/piece/versions.ts";
import { revisionOf } from "../../core/revision.ts";
import { parseProgress } from "../../input/progress/progress-file.ts";

import { deviceName } from "./device.ts";
import { EARLIER, earlierKeys } from "./earlier.ts";
import type { PieceStore } from "./piece-store.ts";

/** What an earlier version kept and this one cannot read. */
export interface LeftBehind {
  readonly kit: string;
  readonly failure: ProgressFailure;
}

/**
 * Makes pieces of the progress that earlier versions kept for each kit and fit. What was taken stands here no longer, what
 * cannot be read stays. `titles` are the kits' by their slugs.
 */
export async function takeOver(
  store: PieceStore,
  titles: Readonly<Record<string, string>>,
): Promise<readonly LeftBehind[]> {
  const left: LeftBehind[] = [];
  for (const key of earlierKeys()) {
    const text = localStorage.getItem(key) ?? "";
    const [kit = "", ...fit] = key.slice(EARLIER.length).split("/");
    const read = parseProgress(text, { kit, fit: fit.join("/") });
    if ("failure" in read) {
      left.push({ kit, failure: read.failure });
      continue;
    }
    const id = `${deviceName()}-${revisionOf(key)}`;
    const { pieces } = await store.all();
    // Another page of this site may be taking it over, too.
    const taken = pieces.some((piece) => piece.id === id);
    const piece = takenPiece(id, titles[kit] ?? kit, nextNumber(pieces, kit), read.progress);
    if (taken || (await store.keep(piece))) localStorage.removeItem(key);
  }
  return left;
}

/** Progress of an earlier version, or of one of its files, as a piece. */
export function takenPiece(id: string, title: string, number: number, progress: Progress): Piece {
  const { kit, fit, ticks, clock } = progress;
  const last = new Date(clock.seen > 0 && clock.seen < 8e15 ? clock.seen : Date.now()).toISOString();
  return {
    id,
    kit,
    title,
    number,
    name: "",
    address: fit,
    progress,
    notes: "",
    begun: last,
    last,
    edition: "",
    versions: countChange({}, deviceName()),
    summary: { done: ticks.length, leaf: progress.at },
  };
}
