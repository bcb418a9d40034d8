import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html, raw } from "../markup.ts";

/** Seat cards of 90 × 54 mm on a sheet of 182 × 245 mm. */
const CARDS_A_SHEET = 8;

/** A longer address is set smaller, in characters. */
const LONG_ADDRESS = 100;

/** A card for each seat with the address and code of its page, to cut apart. */
export function seatCards({ seats, plan }: ClassView): Html {
  const sheets = Array.from({ length: Math.ceil(seats.length / CARDS_A_SHEET) }, (_, i) =>
    seats.slice(i * CARDS_A_SHEET, (i + 1) * CARDS_A_SHEET),
  );
  return html`${sheets.map(
    (
      sheet,
      i,
    ) => html`<section class="sheet seat-cards-sheet" data-sheet><h2>${i === 0 ? say.teacherCards() : say.teacherCardsMore()}</h2>
<ul class="seat-cards">${sheet.map((seat) => card(seat, plan.title))}</ul>
</section>
`,
  )}`;
}

function card({ number, kitTitle, url, code }: SeatView, title: string): Html {
  return html`<li><div><p class="seat-number">${say.seatNumber({ seat: number })}</p><p><b dir="auto">${kitTitle}</b></p><p class="note" dir="auto">${title}</p>${
    url !== undefined &&
    html`<p class="${url.length > LONG_ADDRESS ? "seat-url long" : "seat-url"}">${breakable(url)}</p>`
  }</div>${code ? raw(code.svg) : html`<p class="note seat-nocode">${say.teacherNoCode()}</p>`}</li>`;
}

/** An address that breaks after its slashes, where it is too long for a line. */
function breakable(url: string): Html {
  return html`${url.split(/(?<=[^/]\/)(?!\/)/).map((piece) => html`${piece}<wbr>`)}`;
}
