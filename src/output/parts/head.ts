import * as say from "../../words/messages.ts";
import { type Html, html } from "./markup.ts";

/** What a page's head says about the page to those who link to it. */
export interface PageHead {
  /** One line about the page. */
  readonly summary: string;
  /** False on pages that stand for others or are for a class: they are not to be found by a search. */
  readonly indexed: boolean;
  /** The page's one address; undefined where the site states none. */
  readonly canonical: string | undefined;
  /** The feed as the page links to it, with the site's name; undefined where there is none. */
  readonly feed: { readonly address: string; readonly site: string } | undefined;
  /** How a link to it is shown elsewhere: properties of the Open Graph protocol (ogp.me) in order. */
  readonly preview: readonly { readonly property: string; readonly content: string | number }[];
}

export function headPart({ indexed, canonical, feed, preview }: PageHead): Html {
  return html`${
    !indexed &&
    html`<meta name="robots" content="noindex">
`
  }${
    canonical !== undefined &&
    html`<link rel="canonical" href="${canonical}">
`
  }${
    feed &&
    html`<link rel="alternate" type="application/atom+xml" title="${say.siteFeedTitle({ site: feed.site })}" href="${feed.address}">
`
  }${preview.map(
    ({ property, content }) => html`<meta property="${property}" content="${content}">
`,
  )}`;
}
