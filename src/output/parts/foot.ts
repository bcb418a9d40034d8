import * as say from "../../words/messages.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** What the foot of every page tells of the site. */
export interface Foot {
  readonly summary: string;
  readonly author: { readonly name: string; readonly url?: string | undefined } | undefined;
  /** Address of the feed as the page links to it; undefined where the site has none. */
  readonly feed: string | undefined;
}

export function footPart({ summary, author, feed }: Foot): Html {
  const name = author && (author.url ? html`<a href="${author.url}">${author.name}</a>` : author.name);
  const feedLink = feed !== undefined && html`<a href="${feed}">${say.siteFeed()}</a>`;
  const whose: Markup = name || feedLink ? html`<p>${name}${name && feedLink && " · "}${feedLink}</p>` : false;
  return html`<footer class="foot"><p>${summary} ${say.siteFoot()}</p>${whose}</footer>`;
}
