import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import type { Edition } from "../views/edition.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";

/** Whose picture it is, under which licence the kit stands, and where its author's links lead. */
export function creditsPart({ credit, links }: Kit, { licence }: Edition): Html {
  const picture =
    credit &&
    rich(say.kitCredit, {
      work: html`<cite dir="auto">${credit.work}</cite>`,
      source: credit.url ? html`<a href="${credit.url}">${credit.source}</a>` : credit.source,
      licence: credit.licence,
    });
  const stated =
    licence &&
    rich(say.kitLicence, {
      licence: licence.url ? html`<a href="${licence.url}" rel="license">${licence.name}</a>` : licence.name,
    });
  const items = links.map(
    ({ url, label, host }) =>
      html`<li><a href="${url}" rel="noopener external" dir="auto">${label}</a> <span class="to">${say.kitLinkOpens({ host })}</span></li>`,
  );
  return html`${picture && html`<p class="credit">${picture}</p>`}
${stated && html`<p class="credit">${stated}</p>`}
${links.length > 0 && html`<ul class="links">${items}</ul>`}`;
}

/** All versions, newest first; nothing where the kit states none. */
export function versionsPart({ versions }: Edition): Markup {
  if (versions.length === 0) return false;
  const items = versions.map(
    ({ version, date, day, note }) =>
      html`<div><dt>${version}</dt><dd><time datetime="${date}">${day}</time>${note && html`<span dir="auto">${note}</span>`}</dd></div>`,
  );
  return html`<section id="versions"><h2>${say.kitVersions()}</h2>
<dl class="versions">${items}</dl>
</section>`;
}
