import { revisionOf } from "../../core/revision.ts";
import { type PiecesRead, parsePieces, serialisePieces } from "../../input/piece/piece-file.ts";
import { parseProgress } from "../../input/progress/progress-file.ts";
import { PROGRESS_SCHEMA } from "../../input/progress/progress-schema.ts";
import { takenPiece } from "./take-over.ts";

/** Reads a file of pieces, or one of progress that an earlier version saved. `titles` are the kits' by their slugs. */
export function readFile(text: string, titles: Readonly<Record<string, string>>): PiecesRead {
  const read = parsePieces(text);
  if ("pieces" in read || read.failure.kind !== "other-schema") return read;
  if (read.failure.given !== JSON.stringify(PROGRESS_SCHEMA)) return read;
  const { kit, fit } = JSON.parse(text) as { readonly kit: string; readonly fit: string };
  const progress = parseProgress(text, { kit, fit });
  if ("failure" in progress) return progress;
  const id = `file-${revisionOf(text)}`;
  return parsePieces(serialisePieces([takenPiece(id, titles[kit] ?? kit, 1, progress.progress)]));
}
