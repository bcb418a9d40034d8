import { piecePath } from "../../core/piece/address.ts";
import type { Piece } from "../../core/piece/piece.ts";
import * as say from "../../words/messages.ts";
import { dayOf, pieceName } from "../../words/pieces.ts";
import { button, linkTo, make } from "../shared/dom.ts";
import { part } from "./bench-dom.ts";
import { newerNotice } from "./newer-notice.ts";
import type { OpenedPiece } from "./open-piece.ts";

/** So many other pieces are named; a link leads to all. */
const MOST = 3;

/** Says which piece is on the bench wherever the address did not name it, and leads to the others; marks never show for another piece in silence. */
export function showPieceLine(root: HTMLElement, opened: OpenedPiece): void {
  const place = part(root, "piece");
  const line = pieceLine(opened);
  place.replaceChildren(...newerNotice(opened), ...(line ? [line] : []));
  place.hidden = place.childElementCount === 0;
}

function pieceLine(opened: OpenedPiece): HTMLElement | undefined {
  const { chosen, others } = opened;
  if (chosen.kind === "new") return undefined;
  const { piece } = chosen;
  if (chosen.kind === "found" || !piece) {
    const words = piece ? (others.length > 0 || piece.name !== "" ? pieceName(piece) : "") : say.pieceAbsent();
    return words === "" ? undefined : make("p", "piece-name", words);
  }
  const told = {
    likely: () => [say.pieceLikely({ piece: pieceName(piece), day: dayOf(piece.last) }), inBook(piece)],
    absent: () => [say.pieceAbsent(), say.pieceLikely({ piece: pieceName(piece), day: dayOf(piece.last) })],
    "other-book": () => [say.pieceOtherBook({ piece: pieceName(piece) })],
  }[chosen.kind]();
  const links = [
    ...others.slice(0, MOST).map((one) => linkTo(piecePath(one), say.pieceOpenOther({ piece: pieceName(one) }))),
    anotherLink(opened),
    linkTo("../../../pieces/index.html", say.pieceAll()),
  ];
  const notice = make("p", "notice", told.join(" "));
  const close = button(say.benchClose(), "quiet", () => notice.remove());
  notice.append(...links.flatMap((link) => [" ", link]), " ", close);
  return notice;
}

/** Leads to a new piece: in the book that the address states, or in that of the piece that is shown. */
function anotherLink({ chosen, asked, desk }: OpenedPiece): HTMLAnchorElement {
  const elsewhere = chosen.kind === "other-book";
  const figures = elsewhere ? asked : desk.progress.fit;
  const words = elsewhere ? say.pieceBeginThere() : say.pieceBeginAnother();
  return linkTo(`index.html?piece=new${figures === "" ? "" : `&${figures}`}`, words);
}

function inBook({ progress }: Piece): string {
  return say.pieceInBook({ book: progress.fit === "" ? "own" : "reader" });
}
