import * as say from "../../words/messages.ts";
import type { KitView } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** What a maker should know before she chooses this fit; nothing where there is nothing. */
export function warningsPart({ warnings, notes }: Pick<KitView, "warnings" | "notes">): Html {
  const all = [...warnings, ...notes];
  if (all.length === 0) return html``;
  return html`<section class="panel warn" aria-labelledby="warnings"><h2 id="warnings">${say.kitWarnings()}</h2><ul>${all.map(
    (one) => html`<li>${one}</li>`,
  )}</ul></section>`;
}
