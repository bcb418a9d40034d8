import { latestFirst, type Piece } from "./piece.ts";

/** What an address asks the bench for. */
export interface PieceAsked {
  /** Its piece; `new` for one to begin; undefined where it names none. */
  readonly id?: string | undefined;
  readonly kit: string;
  /** The fit that it states; undefined where it states no figure. */
  readonly fit: string | undefined;
}

/** `found`: the address names it; `likely`: it is the one that was worked on last of those that may be meant. */
export type PieceChosen =
  | { readonly kind: "found" | "likely" | "other-book"; readonly piece: Piece }
  | { readonly kind: "new" }
  | { readonly kind: "absent"; readonly piece: Piece | undefined };

/**
 * Which piece an address opens. A named piece is opened on its own book, whatever figures stand beside it; without a name the
 * last one of the same fit is meant, without figures the last one of the kit. A named one that is not here is told.
 */
export function choosePiece(pieces: readonly Piece[], { id, kit, fit }: PieceAsked): PieceChosen {
  if (id === "new") return { kind: "new" };
  const named = pieces.find((piece) => piece.id === id && piece.kit === kit);
  if (named) return { kind: fit === undefined || fit === named.progress.fit ? "found" : "other-book", piece: named };
  const [likely] = latestFirst(
    pieces.filter((piece) => piece.kit === kit && (fit === undefined || fit === piece.progress.fit)),
  );
  if (id !== undefined) return { kind: "absent", piece: likely };
  return likely ? { kind: "likely", piece: likely } : { kind: "new" };
}
