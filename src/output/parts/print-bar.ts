import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import { PAPERS } from "../views/paper.ts";
import { type Html, html } from "./markup.ts";

/** The bar above a packet in the browser: which paper, and a button. It is not printed. */
export function printBar(): Html {
  const papers = PAPERS.map(({ name }) => html`<option value="${name}">${paperLabel(name)}</option>`);
  return html`<header><form class="print-bar" data-print-bar hidden><label>${say.packetPaper()} <select>${papers}</select></label> <button type="button">${say.packetPrint()}</button> <span>${say.packetScale()}</span></form></header>`;
}
