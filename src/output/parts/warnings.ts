import * as say from "../../words/messages.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** What a maker should know before she chooses this fit; nothing where there is nothing. Notes on the picture are its author's. */
export function warningsPart({ warnings }: Pick<KitViewBase, "warnings">): Html {
  if (warnings.length === 0) return html``;
  return html`<section class="panel warn" aria-labelledby="warnings"><h2 id="warnings">${say.kitWarnings()}</h2><ul>${warnings.map(
    (one) => html`<li>${one}</li>`,
  )}</ul></section>`;
}
