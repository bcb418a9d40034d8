import * as say from "../../words/messages.ts";
import { BARS } from "../drawing/sheets/true-scale.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import type { PacketSheets, PrintedKit } from "../views/packet-view.ts";
import { bundle } from "./bundle.ts";
import { cautionsPart } from "./cautions.ts";
import { coverPart } from "./cover.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";
import { packetTable, tablePart } from "./packet-table.ts";
import { bookMadeReady } from "./preparation.ts";
import { readingPart } from "./reading.ts";
import { stepsPart } from "./steps.ts";
import { suppliesPart } from "./supplies.ts";

/** A seat of a class that a packet is for: its number, and its supplies as the class has them. */
export interface PacketSeat {
  readonly number: number;
  readonly supplies: Html;
}

/** The whole packet: a cover, what is read and worked by, and after it what is cut out. */
export function packetPart(view: PrintedKit, seat?: PacketSeat): Html {
  const made = bookMadeReady(view);
  const table = packetTable(view, "normal", readingPart(view));
  return wholePacket(view, { made, table, gauge: GAUGE }, seat);
}

/** What of a packet the way of folding decides: how the book is made ready, the table, and what its gauge is called. */
export interface PacketWay {
  readonly made: Html;
  readonly table: Html;
  readonly gauge: GaugeNames;
}

/** What the sheets with gauges are called: the first, another one, and in words for those who listen. */
export interface GaugeNames {
  readonly first: () => string;
  readonly more: () => string;
  readonly alt: () => string;
}

const GAUGE: GaugeNames = {
  first: say.packetGauge,
  more: say.packetGaugeMore,
  alt: say.packetGaugeAlt,
};

/** What any packet is printed from. */
export type Printed = KitViewBase & { readonly packet: PacketSheets };

/** Cover, reading pages and what is cut out, whichever way leaves are made. */
export function wholePacket(view: Printed, way: PacketWay, seat?: PacketSeat): Html {
  const { gauges: gauge, strips: strip, templates: template } = view.packet;
  const count = gauge.length + strip.length + template.length;
  return html`${coverPart(view, seat?.number)}

${bundle(say.packetBundleRead(), readingPages(view, way, seat?.supplies ?? suppliesPart(view)))}

${bundle(say.packetBundleCut({ count }), [gauges(view, way.gauge), strips(view), templates(view)])}`;
}

/** What is cut out of a packet in short: it is marked from the table. */
export function cutOutPages(view: Printed, gauge = GAUGE): Html {
  return html`${gauges(view, gauge)}
${templates(view)}`;
}

/** What a packet's page is filled with, by the name in its `data-template`. */
export const PACKET_PAGES = {
  packet: packetPart,
  large: tablePart,
} as const;

export type PacketPage = keyof typeof PACKET_PAGES;

/** From the cautions to the last batch, page after page without a gap. */
function readingPages(view: Printed, { made, table }: PacketWay, supplies: Html): Html {
  return html`<section class="flow" data-flow><h2>${say.kitCautions()}</h2>
${cautionsPart(view)}
<h2>${say.kitSupplies()}</h2>
${supplies}
${warnings(view)}
${bookTest(view.pattern.corner === undefined)}
<h2>${say.kitPrepare()}</h2>
${made}
<h2>${say.kitSteps()}</h2>
${stepsPart(view)}
<h2>${say.kitTable()}</h2>
${table}
</section>`;
}

/** What a book is tested for before work begins: lines to tick. */
function bookTest(isGlued: boolean): Html {
  const lines = [
    say.packetTestCorner(),
    say.packetTestGrain(),
    say.packetTestSpine(),
    ...(isGlued ? [say.packetTestGlue()] : []),
    say.packetTestClean(),
    say.packetTestCloth(),
  ].map((line) => html`<li><span class="box"></span> ${line}</li>`);
  return html`<div class="book-test"><h2>${say.packetTest()}</h2><ul>${lines}</ul></div>`;
}

function warnings({ warnings }: Printed): Markup {
  if (warnings.length === 0) return false;
  const items = warnings.map((one) => html`<li>${one}</li>`);
  return html`<div class="warn"><h2>${say.packetWarnings()}</h2><ul>${items}</ul></div>`;
}

function gauges(view: Printed, { first, more, alt }: GaugeNames): Markup {
  return view.packet.gauges.map((drawing, i) =>
    trueScale(view, i > 0 ? more() : first(), alt(), i > 0 ? furtherSheet(drawing) : drawing),
  );
}

function strips(view: Printed): Markup {
  return view.packet.strips.map(({ batches, first, last, partNumber, parts, drawing }) => {
    const leaves = { first: first.leaf, last: last.leaf };
    const named = {
      ...leaves,
      batches: say.packetStripsBatches({ ...batches, count: batches.last - batches.first + 1 }),
    };
    const title = parts > 1 ? say.packetStripsPart({ ...named, part: partNumber, parts }) : say.packetStrips(named);
    return trueScale(view, title, say.packetStripsAlt(leaves), furtherSheet(drawing), "strips");
  });
}

function templates(view: Printed): Markup {
  return view.packet.templates.map(({ title: parts, drawing }) =>
    trueScale(view, say.packetTemplates({ parts }), say.packetTemplatesAlt({ parts }), furtherSheet(drawing)),
  );
}

/** A sheet's drawing on a page with one before it, whose bars it shows again. */
function furtherSheet(drawing: string): string {
  return drawing.replace(new RegExp(`<g id="${BARS}">.*?</g>`, "s"), `<use href="#${BARS}"/>`);
}

/** A sheet with one drawing that is printed in its own size; the first is a gauge, and has the bars for all. `kind` names what an edition leaves out. */
function trueScale({ packet: { sheet } }: Printed, title: string, alt: string, drawing: string, kind = ""): Html {
  const { width, height } = sheet;
  return html`<section class="sheet true-scale" data-sheet="${kind}"><h2>${title}</h2>
<svg class="drawing" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-label="${alt}">${raw(drawing)}</svg>
</section>
`;
}
