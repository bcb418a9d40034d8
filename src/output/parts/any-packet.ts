import type { AnyPrintedKit } from "../views/any-kit-view.ts";
import { CORNER_PACKET_PAGES } from "./corner-packet.ts";
import type { Html } from "./markup.ts";
import { PACKET_PAGES, type PacketPage } from "./packet.ts";

/** A page of a kit's packet, whichever way its leaves are made. */
export function packetPageOf(view: AnyPrintedKit, page: PacketPage): Html {
  return view.way === "cut" ? PACKET_PAGES[page](view) : CORNER_PACKET_PAGES[page](view);
}
