import { GUIDE_KINDS, type GuidePage } from "../../../core/guide/guide-page.ts";
import * as say from "../../../words/messages.ts";
import type { LinkTo } from "../cards.ts";
import { GUIDE, guideAddress } from "../guide-address.ts";
import { type Html, html } from "../markup.ts";

const HEADINGS = { chapter: say.guideChapters, reference: say.guideReference } as const;

/** The main part of the guide's contents page: all chapters in order, then what is looked up. */
export function guideContents(guide: readonly GuidePage[], link: LinkTo): Html {
  const lists = GUIDE_KINDS.map(
    (kind) => html`<section><h2>${HEADINGS[kind]()}</h2>
<ol class="guide-list ${kind}">${guide.filter((page) => page.kind === kind).map((page) => entry(page, link))}</ol></section>
`,
  );
  return html`<main id="main" class="wrap"><section class="intro"><h1>${say.guideTitle()}</h1><p class="lede">${say.guideLede()}</p></section>
${lists}</main>`;
}

function entry({ name, title, summary, language }: GuidePage, link: LinkTo): Html {
  return html`<li><a href="${link(guideAddress(name))}" lang="${language}">${title}</a><p lang="${language}">${summary}</p></li>
`;
}

/** All pages as they stand beside each of them. */
export function pageList(guide: readonly GuidePage[], page: GuidePage, link: LinkTo): Html {
  const current = html` aria-current="page"`;
  const lists = GUIDE_KINDS.map(
    (kind) =>
      html`<p>${HEADINGS[kind]()}</p><ul>${guide
        .filter((one) => one.kind === kind)
        .map(
          (one) => html`<li><a href="${link(guideAddress(one.name))}"${one === page && current}>${one.title}</a></li>`,
        )}</ul>`,
  );
  // Where the list is longer than the window is high, keys scroll it.
  return html`<nav aria-label="${say.guidePages()}" tabindex="0"><a href="${link(GUIDE)}">${say.guideTitle()}</a>${lists}</nav>`;
}
