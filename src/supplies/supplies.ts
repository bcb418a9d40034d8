import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Counts } from "../plan/effort.ts";
import { formatSize } from "../units/length.ts";

/** Something to have at hand. `kind` tells what is used up from what stays. */
export interface Supply {
  readonly kind: "material" | "tool";
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  /** Why, or which: sizes of this kit. */
  readonly note: string;
  readonly price: number | undefined;
}

/** Cuts after which a craft-knife blade drags in book paper (common practice, no source). */
const CUTS_A_BLADE = 250;

/** Everything that the folding needs, counted from the kit, with the kit's own supplies after. */
export function suppliesOf(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  const { book } = pattern;
  const lines = kit.gaugeLines.length;
  const made: Supply[] = [
    material(
      "second-hand book",
      1,
      "book",
      `${book.leaves} leaves or more, leaf ${formatSize(book.leafHeight, kit.units)} high and ${formatSize(book.leafWidth, kit.units)} wide`,
    ),
    material(
      "card for the scoring gauge",
      1,
      "sheet",
      `${lines} ${lines === 1 ? "line" : "lines"}; cut from the packet's gauge page`,
    ),
    ...(counts.cuts > 0
      ? [
          material(
            "blades for the craft knife",
            Math.ceil(counts.cuts / CUTS_A_BLADE),
            "blades",
            `${counts.cuts} cuts, a fresh blade every ${CUTS_A_BLADE}`,
          ),
        ]
      : []),
    ...(counts.tacks > 0 ? [material("glue dots", counts.tacks, "dots", "one for each tack in the tack list")] : []),
  ];
  const tools: Supply[] = [
    tool("bone folder or other blunt scoring tool", "to press the score lines and sharpen folds"),
    tool(
      "ruler with clear marks",
      kit.units === "mm" ? "in millimetres" : "in sixteenths or thirty-seconds of an inch",
    ),
    tool("soft pencil and eraser", "for the marks"),
    ...(counts.cuts > 0
      ? [tool("craft knife", "with a cap"), tool("cutting mat and metal safety ruler", "under and beside every cut")]
      : []),
    tool("packing", packingNote(kit, pattern)),
  ];
  const own = kit.supplies.map(
    (supply): Supply => ({
      kind: "material",
      item: supply.item,
      quantity: supply.quantity,
      unit: supply.unit,
      note: "",
      price: supply.price,
    }),
  );
  return [...made, ...own, ...tools];
}

function packingNote(kit: Kit, pattern: Pattern): string {
  const height = formatSize(pattern.book.blockThickness, kit.units);
  if (kit.gaugeTile === undefined) return `card or tiles up to ${height} to keep the gauge level`;
  return `${Math.ceil(pattern.book.blockThickness / kit.gaugeTile)} tiles of ${formatSize(kit.gaugeTile, kit.units)}, together ${height}, to keep the gauge level`;
}

function material(item: string, quantity: number, unit: string, note: string): Supply {
  return { kind: "material", item, quantity, unit, note, price: undefined };
}

function tool(item: string, note: string): Supply {
  return { kind: "tool", item, quantity: 1, unit: "piece", note, price: undefined };
}
