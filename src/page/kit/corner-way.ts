import { isCutKit } from "../../core/kit/cut-kit.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Making } from "../../core/refit/making.ts";
import type { PacketPage } from "../../output/parts/packet.ts";
import type { CornerView } from "../../output/views/corner-view.ts";
import type { KitData } from "../shared/kit-data.ts";
import { loadScript } from "../shared/load-script.ts";
import type { Viewed } from "./fitted.ts";

/** All that a page needs of kits whose corners are folded: a script of its own, which only their readers fetch. */
export interface CornerWay {
  readonly make: Making;
  readonly view: (data: KitData, kit: Kit) => Viewed<CornerView>;
  /** Markup of a part of the page. */
  readonly part: (name: string, view: CornerView) => string;
  /** Markup of a packet's page. */
  readonly packet: (page: PacketPage, view: CornerView) => string;
  /** How closely the folded corners match the drawing; undefined for a piece that is read while walking round. Takes as long as a pattern of each way. */
  readonly match: (view: CornerView) => string | undefined;
  /** Text of a file beside the page; undefined for another address. */
  readonly file: (address: string, view: CornerView) => string | undefined;
}

declare global {
  interface Window {
    leaflightCorner?: CornerWay;
  }
}

/** Fetches what folds corners where a kit needs it; `site` leads to the site's folder. @throws LoadError */
export async function needWay(kit: Kit, site = "../../", load = loadScript): Promise<void> {
  if (!isCutKit(kit) && !self.leaflightCorner) await load(`${site}assets/scripts/corner.js`, "refit");
}
