import type { KitClass } from "../../../core/class/kit-class.ts";
import * as say from "../../../words/messages.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import type { PrintedKit } from "../../views/packet-view.ts";
import { factList } from "../facts.ts";
import { type Html, html } from "../markup.ts";
import { cutOutPages, packetPart } from "../packet.ts";
import { packetTable } from "../packet-table.ts";
import { readingPart } from "../reading.ts";
import { seatSupplies } from "./seat-supplies.ts";

/** A seat's packet in the class's edition. */
export function seatPacket(seat: SeatView, view: PrintedKit, plan: KitClass): Html {
  const supplies = seatSupplies(view, plan);
  if (plan.packet === "compact") return inShort(seat, view, { plan, supplies });
  return packetPart(view, { number: seat.number, supplies });
}

/** Its figures, its supplies and its table, then what is cut out; how the steps go, the handout tells. */
function inShort(
  { number, book }: SeatView,
  view: PrintedKit,
  { plan, supplies }: { readonly plan: KitClass; readonly supplies: Html },
): Html {
  const { kit, figures } = view;
  return html`<section class="flow" data-flow>
<p class="over">${say.packetSeatOver({ seat: number, class: plan.title })}</p>
<h1 dir="auto">${kit.title}</h1>
<p class="words">${say.packetSeatBook({ book })}</p>
${factList(figures.key, "figures")}
<h2>${say.kitSupplies()}</h2>
${supplies}
<h2>${say.kitTable()}</h2>
${packetTable(view, "compact", readingPart(view))}
</section>
${cutOutPages(view)}`;
}
