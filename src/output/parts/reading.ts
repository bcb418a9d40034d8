import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html, raw } from "./markup.ts";

/** How a row of the table is read. */
export function readingPart({ reading }: Pick<KitViewBase, "reading">): Html {
  return html`<div class="diagrams">${reading.map(({ svg }) => html`<div class="drawn">${raw(svg)}</div>`)}</div>`;
}
