import * as say from "../../words/messages.ts";
import { type Html, html } from "./markup.ts";

/** What the foot of every page tells of the site. */
export interface Foot {
  readonly summary: string;
  readonly author: { readonly name: string; readonly url?: string | undefined } | undefined;
  /** Address of the guide as the page links to it; undefined where the site has none. */
  readonly guide: string | undefined;
  /** Address of the glossary as the page links to it. */
  readonly glossary: string;
  /** Address of the licences' texts as the page links to them. */
  readonly licences: string;
  /** Address of the feed as the page links to it; undefined where the site has none. */
  readonly feed: string | undefined;
}

export function footPart({ summary, author, guide, glossary, licences, feed }: Foot): Html {
  const name = author && (author.url ? html`<a href="${author.url}">${author.name}</a>` : author.name);
  const feedLink = feed !== undefined && html`<a href="${feed}">${say.siteFeed()}</a>`;
  const guideLink = guide !== undefined && html`<a href="${guide}">${say.guideTitle()}</a>`;
  const glossaryLink = html`<a href="${glossary}">${say.glossaryTitle()}</a>`;
  const licencesLink = html`<a href="${licences}">${say.licencesLink()}</a>`;
  const links = [name, guideLink, glossaryLink, feedLink, licencesLink].filter(Boolean);
  return html`<footer class="foot"><p>${summary} ${say.siteFoot()}</p><p>${links.map((link, i) => html`${i > 0 && " · "}${link}`)}</p></footer>`;
}
