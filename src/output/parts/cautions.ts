import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** The cautions that the kit's work calls for. */
export function cautionsPart({ cautions }: Pick<KitViewBase, "cautions">): Html {
  const items = cautions.map(({ title, text }) => html`<li><h3>${title}</h3><p>${text}</p></li>`);
  return html`<ul class="cautions">${items}</ul>`;
}
