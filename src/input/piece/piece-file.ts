import type { ProgressFailure } from "../../core/bench/progress-failure.ts";
import { MOST_PIECES, type Piece } from "../../core/piece/piece.ts";
import { failureOf, readJson } from "../progress/file-fault.ts";
import { writeProgress } from "../progress/progress-file.ts";
import { PIECES_SCHEMA, pieceSchema, piecesSchema } from "./piece-schema.ts";

/** Pieces that were read, or why a text is no file of pieces. */
export type PiecesRead = { readonly pieces: readonly Piece[] } | { readonly failure: ProgressFailure };

/** Pieces as the text of a JSON file. */
export function serialisePieces(pieces: readonly Piece[]): string {
  return `${JSON.stringify({ schema: PIECES_SCHEMA, pieces: pieces.map(writePiece) })}\n`;
}

/** A piece as it stands in JSON, and as a device keeps it. */
export function writePiece(piece: Piece): object {
  return { ...piece, progress: writeProgress(piece.progress) };
}

/** Reads a text that `serialisePieces` wrote. */
export function parsePieces(text: string): PiecesRead {
  const file = readJson(text);
  if (file === undefined) return { failure: { kind: "not-json" } };
  const count = (file as { readonly pieces?: unknown } | null)?.pieces;
  if (Array.isArray(count) && count.length > MOST_PIECES) return { failure: { kind: "too-many", most: MOST_PIECES } };
  const whole = piecesSchema.safeParse(file);
  if (!whole.success) return { failure: failureOf(whole.error.issues[0]!, file, PIECES_SCHEMA) };
  const pieces = whole.data.pieces as readonly Piece[];
  const failure = failureAmong(pieces);
  return failure ? { failure } : { pieces };
}

/** What a device keeps of a piece, checked as a file is: other programs and earlier versions may have written it. */
export function readPiece(kept: unknown): { readonly piece: Piece } | { readonly failure: ProgressFailure } {
  const read = pieceSchema.safeParse(kept);
  if (!read.success) return { failure: failureOf(read.error.issues[0]!, kept, PIECES_SCHEMA) };
  const piece = read.data as Piece;
  const failure = failureAmong([piece]);
  return failure ? { failure } : { piece };
}

/** What no single value shows. */
function failureAmong(pieces: readonly Piece[]): ProgressFailure | undefined {
  for (const [i, { id, kit, progress }] of pieces.entries()) {
    const path = `pieces[${i}]`;
    if (progress.kit !== kit) return { kind: "mixed-kits", path, kit, given: progress.kit };
    if (pieces.findIndex((one) => one.id === id) < i) return { kind: "piece-twice", path };
  }
  return undefined;
}
