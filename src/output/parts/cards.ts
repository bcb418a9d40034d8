import * as say from "../../words/messages.ts";
import type { KitView } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** A link from a page to an address below the site, `/kits/harbour-moon/`. */
export type LinkTo = (target: string) => string;

/** Cards of kits: of the catalogue, or of a class. */
export function kitCards(kits: readonly KitView[], link: LinkTo): Html {
  const site = link("/").replace("index.html", "");
  return html`<ul class="cards" data-site="${site}">${kits.map((view) => card(view, link))}
</ul>`;
}

function card({ slug, kit, pattern, effort, counts, figures, difficulty }: KitView, link: LinkTo): Html {
  const page = link(`/kits/${slug}/`);
  const front = link(`/kits/${slug}/small.webp`);
  const levels = pattern.levels.length;
  return html`
<li class="card" data-kit="${slug}" data-minutes="${effort.minutes}" data-levels="${levels}" data-light="${pattern.pocket ? "with" : "without"}">
<a class="card-picture" href="${page}" tabindex="-1" aria-hidden="true"><img src="${front}" alt="" loading="lazy"></a>
<div class="card-text">
<h3 dir="auto"><a href="${page}">${kit.title}</a></h3>
<p dir="auto">${kit.summary}</p>
<ul class="tags"><li>${say.catalogueLevels({ count: levels })}</li><li data-own>${say.catalogueLeaves({ count: counts.leaves })}</li><li data-own>${say.catalogueHours({ hours: figures.hours })}</li><li>${difficulty}</li></ul>
</div>
</li>`;
}
