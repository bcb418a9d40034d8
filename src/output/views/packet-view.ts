import { partsOf } from "../../core/window/window.ts";
import { tableFoot, tableIntroduction } from "../../words/packet-table.ts";
import { gaugeSheets } from "../drawing/sheets/gauge-sheet.ts";
import { type StripSheet, stripSheets } from "../drawing/sheets/strip-sheets.ts";
import type { TemplateSheet } from "../drawing/sheets/template-sheet.ts";
import { templateSheets } from "../drawing/sheets/template-sheets.ts";
import { SHEET } from "../drawing/sheets/true-scale.ts";
import { usualLetters } from "../drawing/words-width.ts";
import type { KitView } from "./kit-view.ts";
import { lazily } from "./lazily.ts";
import { type TablePage, tablePages } from "./table-pages.ts";
import { largeTableSetting, packetTableSetting, type TableWords } from "./table-settings.ts";

/** What only the printed packet has. */
export interface PacketView {
  readonly sheet: typeof SHEET;
  readonly gauges: readonly string[];
  readonly strips: readonly StripSheet[];
  readonly templates: readonly TemplateSheet[];
  readonly pages: readonly TablePage[];
  /** Marks to a line, which sets the width of their columns. */
  readonly cells: number;
  readonly largeCells: number;
  readonly largePages: readonly TablePage[];
}

/** A kit with what its page and its packet show. */
export type PrintedKit = KitView & { readonly packet: PacketView };

/** Adds the packet to a kit's view; it is drawn when it is asked for. */
export function withPacket(view: KitView): PrintedKit {
  return lazily<{ packet: PacketView }, KitView>({ packet: () => packetView(view) }, view);
}

function packetView(view: KitView): PacketView {
  const { rows } = view;
  const words = wordsAround(view);
  const normal = packetTableSetting(rows, words);
  const large = largeTableSetting(rows, words);
  return {
    sheet: SHEET,
    gauges: gaugeSheets(view.kit),
    strips: stripSheets(view.kit, view.shown),
    templates: templateSheets(partsOf(view.pattern.window), view.kit.units),
    pages: tablePages(rows, normal),
    cells: normal.marksPerLine,
    largePages: tablePages(rows, large),
    largeCells: large.marksPerLine,
  };
}

/** The longest that can stand above and below a sheet of the table. */
function wordsAround({ kit, pattern, counts }: KitView): TableWords {
  const { leaves, cuts } = counts;
  const ends = [undefined, leaves].map((lastLeaf) => tableFoot({ leaves, cuts, sofar: cuts, all: cuts, lastLeaf }));
  return {
    above: usualLetters(tableIntroduction(kit, pattern)),
    below: Math.max(...ends.map(({ sums, end }) => usualLetters(`${sums} ${end}`))),
  };
}
