import * as say from "../../words/messages.ts";
import type { KitCard } from "../views/kit-card.ts";
import { type Html, html } from "./markup.ts";

/** A link from a page to an address below the site, `/kits/harbour-moon/`. */
export type LinkTo = (target: string) => string;

/** Cards of kits: of the catalogue, or of a class. */
export function kitCards(kits: readonly KitCard[], link: LinkTo): Html {
  const site = link("/").replace("index.html", "");
  return html`<ul class="cards" data-site="${site}">${kits.map((one) => card(one, link))}
</ul>`;
}

function card(one: KitCard, link: LinkTo): Html {
  const { slug, kit, levels, hasLight, minutes, leaves, hours, difficulty, madeToFold, foldedMinutes } = one;
  const page = link(`/kits/${slug}/`);
  const front = link(`/kits/${slug}/small.webp`);
  return html`
<li class="card" data-kit="${slug}" data-minutes="${minutes}" data-levels="${levels}" data-light="${hasLight ? "with" : "without"}"${madeToFold && html` data-knife="made"`}${foldedMinutes !== undefined && html` data-folded="${Math.round(foldedMinutes)}"`}>
<a class="card-picture" href="${page}" tabindex="-1" aria-hidden="true"><img src="${front}" alt="" loading="lazy"></a>
<div class="card-text">
<h3 dir="auto"><a href="${page}">${kit.title}</a></h3>
<p dir="auto">${kit.summary}</p>
<ul class="tags"><li>${say.catalogueLevels({ count: levels })}</li><li data-own>${say.catalogueLeaves({ count: leaves })}</li><li data-own>${say.catalogueHours({ hours })}</li><li>${difficulty}</li>${madeToFold && html`<li>${say.catalogueKnifeFree()}</li>`}</ul>
</div>
</li>`;
}
