import type { UnitSystem } from "../units/length.ts";
import type { TableSetting } from "./table-pages.ts";

/** The packet's table: about thirty leaves a page, generous enough to tick off by hand. Columns are set in print.css. */
export function packetTable(units: UnitSystem): TableSetting {
  return { height: 207, line: 4.6, padding: 2.2, marksPerLine: units === "mm" ? 6 : 4, foldsPerLine: 9 };
}

/** The large-print table: one and a half times the type. */
export function largeTable(units: UnitSystem): TableSetting {
  return { height: 203, line: 7.2, padding: 3, marksPerLine: units === "mm" ? 4 : 3, foldsPerLine: 6 };
}
