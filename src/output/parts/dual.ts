import type { Dual } from "../../words/dual.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** One quantity in both unit systems; the switch in the page decides which is seen. */
export function dual(value: Dual<Markup>): Html {
  if (String(value.mm) === String(value.in)) return html`${value.mm}`;
  return html`<span class="u-mm">${value.mm}</span><span class="u-in">${value.in}</span>`;
}
