import type { Kit } from "../../core/kit/kit.ts";
import { patternAt } from "../../core/pattern/compute.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { stepFor, type UnitSystem } from "../../core/units/length.ts";
import { type Dual, dual, styleFor } from "../../words/dual.ts";
import { type NotchText, notchText, type Row, rowOf } from "./row.ts";

/** A row of the page's table: the leaf, and its marks in both unit systems. */
export interface DualRow {
  readonly row: Row;
  readonly marks: Dual<Row["marks"]>;
  /** Folds differ between the unit systems only where rounding absorbed another span. */
  readonly folds: Dual<Row["folds"]>;
  readonly sameFolds: boolean;
  readonly notch: Dual<NotchText> | undefined;
}

/** The rows of a pattern's table in both unit systems, from those in the kit's own. Marks in the other one are rounded from the picture, not from the kit's own marks. */
export function dualRows(kit: Kit, pattern: Pattern, rows: readonly Row[]): DualRow[] {
  const other: UnitSystem = kit.units === "mm" ? "in" : "mm";
  const markStep = stepFor(other, kit.fit.markStep);
  const twin = patternAt({
    ...kit,
    light: undefined,
    insert: undefined,
    units: other,
    fit: { ...kit.fit, markStep, head: pattern.fit.head },
  });
  const twinRows = twin.leaves.map((leaf) => rowOf(leaf, twin, styleFor(other, markStep)));
  return rows.map((row, i) => {
    const twinRow = twinRows[i]!;
    const of = <T>(pick: (row: Row) => T): Dual<T> => dual((units) => pick(units === kit.units ? row : twinRow));
    const notch = pattern.pocket?.notches.find((one) => one.leaf === row.leaf);
    return {
      row,
      marks: of((one) => one.marks),
      folds: of((one) => one.folds),
      sameFolds: row.folds.join() === twinRow.folds.join(),
      notch: notch && dual((units) => notchText(notch, styleFor(units, kit.fit.markStep))!),
    };
  });
}
