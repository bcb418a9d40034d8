import * as say from "../../words/messages.ts";
import type { KitView } from "../views/kit-view.ts";
import { type Html, html, rich } from "./markup.ts";

/** The flaps that need a dot of glue. */
export function tacksPart({ tacks: { rows, held } }: Pick<KitView, "tacks">): Html {
  const items = rows.map(({ leaf, place }) => html`<li>${rich(say.kitTack, { leaf, place: place })}</li>`);
  const list =
    rows.length === 0
      ? html`<p>${say.kitTacksNone()}</p>`
      : html`<p>${say.kitTacksText()}</p>
<ul class="columns tacks">${items}</ul>`;
  return html`${list}${held > 0 && html`<p class="note">${say.kitTacksHeld({ count: held })}</p>`}`;
}
