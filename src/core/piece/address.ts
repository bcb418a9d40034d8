import type { Piece } from "./piece.ts";

/** The piece's bench page, as seen from the folder that it stands in. */
export function piecePath({ id, address }: Pick<Piece, "id" | "address">): string {
  return `index.html?piece=${id}${address === "" ? "" : `&${address}`}`;
}
