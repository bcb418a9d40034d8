import { serialisePieces } from "../../input/piece/piece-file.ts";
import { pieceFileName } from "../pieces/file-name.ts";
import { offerFile } from "../shared/offer-file.ts";
import { part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The piece out of this browser as a file; files are opened among the pieces. */
export function bindFiles(dialog: HTMLDialogElement, host: BenchHost): void {
  part<HTMLAnchorElement>(dialog, "export").addEventListener("click", (event) => {
    const piece = host.piece.now(host.desk);
    offerFile(event.currentTarget as HTMLAnchorElement, serialisePieces([piece]), pieceFileName(piece));
  });
}
