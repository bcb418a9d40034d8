import type { Piece } from "../../core/piece/piece.ts";

/** The name of a file of one piece. */
export function pieceFileName({ kit, number }: Pick<Piece, "kit" | "number">): string {
  return `${kit}-piece-${number}.json`;
}
