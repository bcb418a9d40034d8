import * as say from "../../words/messages.ts";
import { type Html, html } from "./markup.ts";

/** The guide's contents page, below the site. */
export const GUIDE = "/guide/";

/** The address of a page of the guide, below the site. */
export function guideAddress(name: string): string {
  return `${GUIDE}${name}/`;
}

/** The link to the guide at the top of a page; `address` is the guide's as the page links to it. */
export function guideLink(address: string): Html {
  return html`<a class="top-link" href="${address}">${say.guideLink()}</a>`;
}
