import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";
import type { ListedMessage, ListedPrinting } from "./desk-list.ts";

/** What stands above a served page that is not as it should be. */
export interface ServedBand {
  readonly messages: readonly ListedMessage[];
  /** Whether the page below shows the last state that could be made. */
  readonly isLastGood: boolean;
  /** Where the desk shows what is wrong; without its key. */
  readonly desk: string | undefined;
}

/** Messages that are told at once; the desk has all of them. */
const MOST = 5;

/** The band above a page: what is wrong, where, and what to do. */
export function servedBand({ messages, isLastGood, desk }: ServedBand): Html {
  const more = messages.length - MOST;
  return html`<aside class="served-band" role="alert" aria-label="${say.servedWrong()}"><p class="served-band-head"><strong>${say.servedWrong()}</strong> ${isLastGood ? say.servedLastGood() : say.servedNothing()}${desk !== undefined && html` <a href="${desk}">${say.servedToDesk()}</a>`}</p>
<ul>${messages.slice(0, MOST).map(wrongItem)}</ul>${more > 0 && html`<p>${say.deskMoreMessages({ count: more })}</p>`}</aside>`;
}

function wrongItem({ file, line, column, field, given, allowed, remedy }: ListedMessage): Html {
  const place = [file, line, column].filter((part) => part !== undefined).join(":");
  return html`<li><code>${place}</code> <b>${field}</b>: ${say.deskGiven({ given })} ${say.deskAllowed({ allowed })} ${say.deskRemedy({ remedy })}</li>`;
}

/** A kit or a class that is not worked out yet, and its address. */
export interface WaitingPage {
  readonly title: string;
  readonly page: string;
}

/** A note above the catalogue while kits are still worked out: they can be gone to, and then come first. */
export function waitingNote(waiting: readonly WaitingPage[], all: number): Html {
  return html`<aside class="served-note" aria-label="${say.servedWaitingTitle()}"><p>${say.servedWaiting({ known: all - waiting.length, all })}</p>
<details><summary>${say.servedWaitingList({ count: waiting.length })}</summary><ul>${waiting.map(({ title, page }) => html`<li><a href="${page}">${title}</a></li>`)}</ul></details></aside>`;
}

/** The strip below a page of a kit or a class: to the desk, and a button that prints its PDFs. `of` names what is printed: `kit moon`. */
export function servedStrip(of: string | undefined, desk: string | undefined): Html {
  return html`<aside class="served-strip" aria-label="${say.servedHere()}"><p>${say.servedHere()}</p>${desk !== undefined && html`<a href="${desk}">${say.servedOnDesk()}</a>`}${of !== undefined && html`<button type="button" data-print="${of}">${say.deskPrint()}</button>`}<div data-far role="status"></div></aside>`;
}

/** How far the printing is, in the strip. */
export function servedFar({ done, of, left, ended, failure }: ListedPrinting): Html {
  if (failure !== undefined) return html`<p><strong>${say.deskPrintFailed()}</strong></p><pre>${failure}</pre>`;
  if (ended) return html`<p>${say.servedPrinted()}</p>`;
  if (of === 0) return html`<p>${say.deskPrintBegins()}</p>`;
  const words = left === undefined ? say.deskPrintFar({ done, of }) : say.deskPrintFarLeft({ done, of, left });
  return html`<progress max="${of}" value="${done}" aria-hidden="true"></progress><p>${words}</p>`;
}
