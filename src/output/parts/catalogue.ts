import { isOver } from "../../core/class/class-state.ts";
import * as say from "../../words/messages.ts";
import type { ClassCard } from "../views/class/class-card.ts";
import type { KitCard } from "../views/kit-card.ts";
import { kitCards, type LinkTo } from "./cards.ts";
import { continuePart } from "./continue.ts";
import { finderPart } from "./finder.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";

/** What the catalogue shows. `link` leads from its page. */
export interface CataloguePage {
  readonly heading: string;
  /** What the site's author tells. */
  readonly story: Html;
  readonly kits: readonly KitCard[];
  /** Whether others follow, of which whoever serves the page tells. */
  readonly hasWaiting?: boolean;
  readonly classes: readonly ClassCard[];
  readonly link: LinkTo;
  /** Address of the guide as the page links to it; undefined where the site has none. */
  readonly guide: string | undefined;
}

/** The main part of the catalogue: all kits with their finder, and all classes. */
export function cataloguePage({ heading, story, kits, hasWaiting, classes, link, guide }: CataloguePage): Html {
  const list = html`<h2 class="sr">${say.catalogueKits()}</h2>
${finderPart({ kind: "catalogue", units: "mm" })}
${kitCards(kits, link)}
${classLists(classes, link)}`;
  return html`<main id="main" class="wrap">
${continuePart(link)}
<section class="intro">
<h1 dir="auto">${heading}</h1>
<div class="lede">${story}</div>
</section>
${kits.length > 0 ? list : !hasWaiting && emptyCatalogue(guide)}
</main>`;
}

/** Told to an author whose site has no kit yet. */
function emptyCatalogue(guide: string | undefined): Html {
  const words = rich(say.catalogueEmpty, {
    folder: html`<code>content/kits</code>`,
    file: html`<code>index.md</code>`,
    guide: guide === undefined ? say.catalogueGuide() : html`<a href="${guide}">${say.catalogueGuide()}</a>`,
  });
  return html`<p class="empty">${words}</p>`;
}

/** Classes to come, and then those that are over. */
function classLists(classes: readonly ClassCard[], link: LinkTo): Markup {
  const past = classes.filter(({ plan }) => isOver(plan.state));
  const coming = classes.filter((one) => !past.includes(one));
  return [
    classList("classes", say.catalogueClasses(), coming, link),
    classList("past-classes", say.cataloguePast(), past.toReversed(), link),
  ];
}

function classList(id: string, heading: string, classes: readonly ClassCard[], link: LinkTo): Markup {
  if (classes.length === 0) return false;
  const items = classes.map(
    ({ slug, date, plan: { title, place, summary } }) =>
      html`<li><h3><a href="${link(`/classes/${slug}/`)}">${title}</a></h3><p>${say.catalogueClass({ date, place })}${
        summary && html`<span class="note">${summary}</span>`
      }</p></li>`,
  );
  return html`<section id="${id}"><h2>${heading}</h2>
<ul class="classes">${items}</ul>
</section>`;
}
