import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { editionOf } from "../views/edition.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import type { PacketSheets } from "../views/packet-view.ts";
import { factList } from "./facts.ts";
import { tagline } from "./figures.ts";
import { anyLonger, longClass } from "./long-text.ts";
import { type Html, html } from "./markup.ts";
import { printPlan } from "./print-plan.ts";

/** Usual letters of texts up to which the cover sets them large. */
const MOST = { title: 70, summary: 260, told: 200 } as const;

/** The packet's first sheet. */
export function coverPart(view: KitViewBase & { readonly packet: PacketSheets }, seat: number | undefined): Html {
  const { kit, figures, packet } = view;
  const told = publication(kit);
  const corners = view.pattern.corner !== undefined;
  const sheets = {
    gauge: packet.gauges.length,
    corners,
    strips: packet.strips.length,
    templates: packet.templates.length,
  };
  return html`<section class="sheet cover" data-sheet>
<p class="over">${seat === undefined ? say.packetOver() : say.packetOverSeat({ seat })}</p>
<h1 dir="auto"${longClass(kit.title, MOST.title)}>${kit.title}</h1>
<p class="${anyLonger([kit.summary], MOST.summary) ? "lede long" : "lede"}" dir="auto">${kit.summary}</p>
<img class="cover-picture" src="../cover.jpg" alt="${say.kitFrontAlt({ title: kit.title })}">
${factList(figures.key, "figures")}
<div class="plan"><h2>${say.packetPlan()}</h2><ul data-print-plan="${JSON.stringify(sheets)}">${printPlan(sheets)}</ul></div>
<p class="${anyLonger(told, MOST.told) ? "tagline long" : "tagline"}">${tagline(view)}${told.map((one) => ` · ${one}`)}</p>
</section>`;
}

/** Version, licence and credit, as far as the kit states them. */
function publication(kit: Kit): string[] {
  const { licence, credit } = kit;
  const { current } = editionOf(kit);
  return [
    ...(current ? [say.packetVersion({ version: current.version, day: current.day })] : []),
    ...(licence ? [say.packetLicence({ licence: licence.name })] : []),
    ...(credit ? [say.packetCredit({ work: credit.work, source: credit.source, licence: credit.licence })] : []),
  ];
}
