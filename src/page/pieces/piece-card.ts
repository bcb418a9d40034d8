import { piecePath } from "../../core/piece/address.ts";
import * as say from "../../words/messages.ts";
import { dayOf, pieceName } from "../../words/pieces.ts";
import { linkTo, make } from "../shared/dom.ts";
import type { Glance } from "./glance.ts";

/** A piece's own page, or the bench that goes on with it; `site` is the site's folder as seen from here, with its slash. */
export function pieceAddress(piece: Glance, site: string, page: "make" | "bench"): string {
  return `${site}kits/${piece.kit}/${page}/${piecePath(piece)}`;
}

/** Where the work on a piece goes on, in the words of its link. */
export function continueWords({ done, percent, page, leaf }: Glance["summary"]): string {
  if (percent === undefined) return say.pieceContinueCount({ count: done });
  const place = page !== undefined ? "page" : leaf !== undefined ? "leaf" : "step";
  return say.pieceContinue({ place, number: page ?? leaf ?? 0, percent });
}

/** A piece that is under way, with the link that goes on with it. */
export function continueCard(piece: Glance, site: string): HTMLElement {
  const picture = make("img", "");
  picture.src = `${site}kits/${piece.kit}/front.svg`;
  picture.alt = "";
  const title = say.pieceOfKit({ title: piece.title, piece: pieceName(piece) });
  const own = linkTo(pieceAddress(piece, site, "make"), title);
  const link = linkTo(pieceAddress(piece, site, "bench"), continueWords(piece.summary), "button");
  const last = make("span", "note", say.pieceLast({ day: dayOf(piece.last) }));
  const words = make("div", "", make("p", "continue-title", own), make("p", "", link, " ", last));
  return make("li", "continue-card", picture, words);
}
