import { lazily } from "../../core/lazily.ts";
import { type Batch, batchesOf } from "../../core/plan/batches.ts";
import { partsOf } from "../../core/window/window.ts";
import { frontSymbol } from "../drawing/front/here.ts";
import { gaugeSheets } from "../drawing/sheets/gauge-sheet.ts";
import { type StripSheet, stripSheets } from "../drawing/sheets/strip-sheets.ts";
import type { TemplateSheet } from "../drawing/sheets/template-sheet.ts";
import { templateSheets } from "../drawing/sheets/template-sheets.ts";
import { SHEET } from "../drawing/sheets/true-scale.ts";
import type { KitView } from "./kit-view.ts";
import { type TableBlock, tableBlocks } from "./table-blocks.ts";
import { marksPerLine, type TableSize } from "./table-setting.ts";

/** What only the printed packet has, whichever way leaves are made. */
export interface PacketSheets {
  readonly sheet: typeof SHEET;
  readonly gauges: readonly string[];
  readonly strips: readonly StripSheet[];
  readonly templates: readonly TemplateSheet[];
  /** The front in small, once for the whole packet. */
  readonly front: string;
}

/** The same of a kit that is cut. */
export interface PacketView extends PacketSheets {
  /** The table by batches. */
  readonly table: readonly TableBlock[];
  /** How many marks a line of it has room for at a size, with notches beside it or none. */
  readonly perLine: (size: TableSize) => (notched: boolean) => number;
}

/** A kit with what its page and its packet show. */
export type PrintedKit = KitView & { readonly packet: PacketView };

/** Adds the packet to a kit's view; it is drawn when it is asked for. `left` is what becomes of it. */
export function withPacket(view: KitView, left = (packet: PacketView): PacketView => packet): PrintedKit {
  return lazily<{ packet: PacketView }, KitView>({ packet: () => left(packetView(view)) }, view);
}

function packetView(view: KitView): PacketView {
  const { kit, pattern, shown } = view;
  const batches = batchesOf(pattern, kit.fit.batch, kit.gaugeTile);
  return {
    sheet: SHEET,
    gauges: gaugeSheets(kit),
    strips: stripSheets(kit, shown, batches),
    templates: templateSheets(partsOf(pattern.window), kit.units),
    front: frontSymbol(shown, 0),
    table: blocksOf(view, batches),
    perLine: (size) => marksPerLine(view.rows, size),
  };
}

function blocksOf({ rows, tacks }: KitView, batches: readonly Batch[]): TableBlock[] {
  const places = tacks.rows.map(({ number: leaf, place }) => ({ leaf, place }));
  return tableBlocks(rows, batches, places);
}
