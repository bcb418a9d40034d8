import * as say from "../../words/messages.ts";
import type { ClassView } from "../views/class/class-view.ts";
import type { KitView } from "../views/kit-view.ts";
import { kitCards, type LinkTo } from "./cards.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";

/** What stands below the catalogue's finder: all kits, and all classes. */
export function catalogueList(kits: readonly KitView[], classes: readonly ClassView[], link: LinkTo): Html {
  return html`${kitCards(kits, link)}
${classList(classes, link)}`;
}

/** Told to an author whose site has no kit yet. */
export function emptyCatalogue(): Html {
  const words = rich(say.catalogueEmpty, {
    folder: html`<code>content/kits</code>`,
    file: html`<code>index.md</code>`,
  });
  return html`<p class="empty">${words}</p>`;
}

function classList(classes: readonly ClassView[], link: LinkTo): Markup {
  if (classes.length === 0) return false;
  const items = classes.map(
    ({ slug, date, plan: { title, place, summary } }) =>
      html`<li><h3><a href="${link(`/classes/${slug}/`)}">${title}</a></h3><p>${say.catalogueClass({ date, place })}${
        summary && html`<span class="note">${summary}</span>`
      }</p></li>`,
  );
  return html`<section id="classes"><h2>${say.catalogueClasses()}</h2>
<ul class="classes">${items}</ul>
</section>`;
}
