import { type AnyPatternedKit, isCut } from "../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { type PrintedCorner, withCornerPacket } from "./corner-packet.ts";
import { type CornerView, viewCorner } from "./corner-view.ts";
import { type KitView, viewKit } from "./kit-view.ts";
import { type PrintedKit, withPacket } from "./packet-view.ts";

/** What a kit's page shows, whichever way its leaves are made: `way` tells which. */
export type AnyKitView = KitView | CornerView;

/** The same with what its packet shows. */
export type AnyPrintedKit = PrintedKit | PrintedCorner;

/** Prepares a kit for its page. */
export function viewAnyKit(computed: AnyPatternedKit, cautions: readonly Caution[]): AnyKitView {
  return isCut(computed) ? viewKit(computed, cautions) : viewCorner(computed, cautions);
}

/** Adds the packet to a kit's view. */
export function printedKit(view: AnyKitView): AnyPrintedKit {
  return view.way === "cut" ? withPacket(view) : withCornerPacket(view);
}
