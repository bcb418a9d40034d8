import * as say from "../../words/messages.ts";
import type { LinkTo } from "./cards.ts";
import { type Html, html } from "./markup.ts";

/** Where pieces under way stand: on the catalogue those of all its kits, on a kit's page its own. A script fills it; without pieces it stays away. */
export function continuePart(link: LinkTo, kit?: { readonly slug: string; readonly title: string }): Html {
  const site = link("/index.html").replace("index.html", "");
  const own = kit && html` data-own="${kit.slug}" data-title="${kit.title}"`;
  return html`<section class="continue" aria-label="${say.pieceUnderWay()}" data-continue="${site}"${own} hidden></section>`;
}
