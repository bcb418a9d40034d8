import type { GuideFigure, GuidePage } from "../../../core/guide/guide-page.ts";
import type { Reference, ReferenceName } from "../../../core/guide/reference.ts";
import { language } from "../../../words/language.ts";
import * as say from "../../../words/messages.ts";
import type { KitViewBase } from "../../views/kit-view.ts";
import type { LinkTo } from "../cards.ts";
import { guideAddress } from "../guide-address.ts";
import { type Html, html, type Markup, raw } from "../markup.ts";
import { withTerms } from "../terms.ts";
import { pageList } from "./guide-contents.ts";
import { type RenderedMarkdown, renderMarkdown, type UsedIds } from "./markdown.ts";
import { groupId, type HeadingLevel, referencePart } from "./reference.ts";

/** A page of the guide with what it needs to show. `link` leads from it. */
export interface GuidePageView {
  readonly page: GuidePage;
  /** All pages in their order. */
  readonly guide: readonly GuidePage[];
  readonly reference: (name: ReferenceName) => Reference;
  /** A kit whose drawings are shown; undefined where the site has none. */
  readonly kit: KitViewBase | undefined;
  readonly link: LinkTo;
}

/** The main part of a page of the guide. */
export function guidePagePart({ page, guide, reference, kit, link }: GuidePageView): Html {
  let level: HeadingLevel = 2;
  const used: UsedIds = new Map();
  const passages = page.passages.map((one) => {
    if ("reference" in one) return referencePassage(one.reference, reference(one.reference), level);
    if ("figure" in one) return figurePassage(one.figure, kit);
    const prose = prosePassage(
      renderMarkdown(one.markdown, (name) => link(guideAddress(name)), used),
      page,
      link,
    );
    if (prose.contents.length > 0) level = 3;
    return prose;
  });
  const entries = passages.flatMap(({ contents }) => contents);
  const contents =
    entries.length > 1 &&
    html`<nav class="guide-contents" aria-label="${say.guideOnThisPage()}"><ul>${entries}</ul></nav>`;
  return html`<main id="main" class="wrap guide">
<details class="guide-pages"><summary>${say.guidePages()}</summary>${pageList(guide, page, link)}</details>
<article>
<div class="intro"${langOf(page)}><h1>${page.title}</h1><p class="lede">${page.summary}</p></div>
${contents}
<div class="guide-text">${passages.map(({ body }) => body)}</div>
${neighbours(guide, page, link)}
</article>
</main>`;
}

interface Passage {
  readonly body: Html;
  /** Items of the page's own contents. */
  readonly contents: readonly Html[];
}

function prosePassage({ html: text, headings }: RenderedMarkdown, page: GuidePage, link: LinkTo): Passage {
  const terms = page.kind === "chapter" && !isForeign(page);
  const prose = terms ? withTerms(raw(text), link("/glossary/index.html")) : raw(text);
  const body = isForeign(page) ? html`<div${langOf(page)}>${prose}</div>` : prose;
  return { body, contents: headings.map(({ id, text }) => item(id, text)) };
}

function referencePassage(name: ReferenceName, reference: Reference, level: HeadingLevel): Passage {
  const groups = reference.filter(({ path }) => path !== "");
  return {
    body: referencePart(name, reference, level),
    contents: groups.map(({ path }) => item(groupId(name, path), html`<code>${path}</code>`)),
  };
}

/** A drawing of a kit; nothing where the site has no kit, or this one no such drawing. */
function figurePassage(name: GuideFigure, kit: KitViewBase | undefined): Passage {
  const figure = kit && { measure: kit.measuring, leaf: kit.reading[0] }[name];
  const body = html`${figure && html`<figure>${raw(figure.svg)}<figcaption>${say.guideFigure({ kit: kit.kit.title })}</figcaption></figure>`}`;
  return { body, contents: [] };
}

function item(id: string, text: Markup): Html {
  return html`<li><a href="#${id}">${text}</a></li>`;
}

/** The pages before and after in the guide's order. */
function neighbours(guide: readonly GuidePage[], page: GuidePage, link: LinkTo): Html {
  const at = guide.indexOf(page);
  const before = guide[at - 1];
  const next = guide[at + 1];
  const to = ({ name }: GuidePage): string => link(guideAddress(name));
  return html`<nav class="guide-neighbours" aria-label="${say.guideNeighbours()}">${
    before && html`<a rel="prev" href="${to(before)}">${say.guidePrevious({ title: before.title })}</a>`
  }${next && html`<a rel="next" href="${to(next)}">${say.guideNext({ title: next.title })}</a>`}</nav>`;
}

/** Says of what stands in it which language it is, where that is not the site's. */
function langOf(page: GuidePage): Markup {
  return isForeign(page) && html` lang="${page.language}"`;
}

/** Whether a page is in another language than the site. */
function isForeign(page: GuidePage): boolean {
  return page.language.split("-")[0] !== language().split("-")[0];
}
