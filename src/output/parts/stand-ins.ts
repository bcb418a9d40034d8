import * as say from "../../words/messages.ts";
import type { KitCard } from "../views/kit-card.ts";
import type { LinkTo } from "./cards.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** The page that hosts serve where an address leads nowhere. */
export function missingPage(kits: readonly KitCard[], link: LinkTo): Html {
  return html`<main id="main" class="wrap">
<section class="intro missing">
<div>
<h1>${say.siteMissingHeading()}</h1>
<div class="lede"><p>${say.siteMissingText()}</p></div>
<p><a class="button" href="${link("/index.html")}">${say.siteToCatalogue()}</a></p>
</div>
${missingKits(kits, link)}
</section>
</main>`;
}

/** The page that stands in without network for one that the device does not keep. */
export function absentPage(link: LinkTo): Html {
  return html`<main id="main" class="wrap">
<section class="intro">
<h1 data-absent-heading>${say.siteAbsentHeading()}</h1>
<div class="lede">
<p data-absent-text>${say.siteAbsentText()}</p>
</div>
<p><a class="button" href="${link("/index.html")}">${say.siteToCatalogue()}</a></p>
<p><a href="${link("/index.html")}" data-absent-again hidden>${say.siteAbsentAgain()}</a></p>
</section>
</main>`;
}

function missingKits(kits: readonly KitCard[], link: LinkTo): Markup {
  if (kits.length === 0) return false;
  const items = kits.map(
    ({ slug, kit }) => html`
<li><a href="${link(`/kits/${slug}/index.html`)}"><img src="${link(`/kits/${slug}/front.svg`)}" alt="" width="64" height="64"><span dir="auto">${kit.title}</span></a></li>`,
  );
  return html`<nav aria-labelledby="missing-kits"><h2 id="missing-kits">${say.siteMissingKits()}</h2>
<ul class="missing-kits">${items}
</ul></nav>`;
}
