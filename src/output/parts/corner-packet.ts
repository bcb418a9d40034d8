import * as say from "../../words/messages.ts";
import type { PrintedCorner } from "../views/corner-packet.ts";
import { cornerPacketTable } from "./corner-packet-table.ts";
import type { Html } from "./markup.ts";
import { cutOutPages, type GaugeNames, type PacketPage, type PacketSeat, wholePacket } from "./packet.ts";
import { tableAlone } from "./packet-table.ts";
import { bookMadeReadyForCorners } from "./preparation.ts";
import { readingPart } from "./reading.ts";

const GAUGE: GaugeNames = {
  first: say.cornerPacketGauge,
  more: say.cornerPacketGauge,
  alt: say.cornerPacketGaugeAlt,
};

/** The whole packet of a kit whose corners are folded. */
export function cornerPacketPart(view: PrintedCorner, seat?: PacketSeat): Html {
  const made = bookMadeReadyForCorners(view, false);
  const table = cornerPacketTable(view, "normal", readingPart(view));
  return wholePacket(view, { made, table, gauge: GAUGE }, seat);
}

/** What is cut out of a packet in short. */
export function cornerCutOutPages(view: PrintedCorner): Html {
  return cutOutPages(view, GAUGE);
}

/** What a packet's page is filled with, by the name in its `data-template`. */
export const CORNER_PACKET_PAGES: Readonly<Record<PacketPage, (view: PrintedCorner) => Html>> = {
  packet: cornerPacketPart,
  large: (view) => tableAlone(view, cornerPacketTable(view, "large")),
};
