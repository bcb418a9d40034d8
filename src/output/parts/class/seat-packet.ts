import type { KitClass } from "../../../core/class/kit-class.ts";
import * as say from "../../../words/messages.ts";
import type { AnyPrintedKit } from "../../views/any-kit-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { cornerCutOutPages, cornerPacketPart } from "../corner-packet.ts";
import { cornerPacketTable } from "../corner-packet-table.ts";
import { factList } from "../facts.ts";
import { type Html, html } from "../markup.ts";
import { cutOutPages, packetPart } from "../packet.ts";
import { packetTable } from "../packet-table.ts";
import { readingPart } from "../reading.ts";
import { seatSupplies } from "./seat-supplies.ts";

/** A seat's packet in the class's edition. */
export function seatPacket(seat: SeatView, view: AnyPrintedKit, plan: KitClass): Html {
  const supplies = seatSupplies(view, plan);
  if (plan.packet === "compact") return inShort(seat, view, { plan, supplies });
  const own = { number: seat.number, supplies };
  return view.way === "cut" ? packetPart(view, own) : cornerPacketPart(view, own);
}

/** Its figures, its supplies and its table, then what is cut out; how the steps go, the handout tells. */
function inShort(
  { number, book }: SeatView,
  view: AnyPrintedKit,
  { plan, supplies }: { readonly plan: KitClass; readonly supplies: Html },
): Html {
  const { kit, figures } = view;
  const [table, cutOut] =
    view.way === "cut"
      ? [packetTable(view, "compact", readingPart(view)), cutOutPages(view)]
      : [cornerPacketTable(view, "compact", readingPart(view)), cornerCutOutPages(view)];
  return html`<section class="flow" data-flow>
<p class="over">${say.packetSeatOver({ seat: number, class: plan.title })}</p>
<h1 dir="auto">${kit.title}</h1>
<p class="words">${say.packetSeatBook({ book })}</p>
${factList(figures.key, "figures")}
<h2>${say.kitSupplies()}</h2>
${supplies}
<h2>${say.kitTable()}</h2>
${table}
</section>
${cutOut}`;
}
