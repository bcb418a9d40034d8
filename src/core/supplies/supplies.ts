import { formatSize } from "../../words/lengths.ts";
import type { Kit, Priced } from "../kit/kit.ts";
import { layOut } from "../packing/lay-out.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Counts } from "../plan/effort.ts";
import { MM_PER_INCH, tidy } from "../units/length.ts";
import type { Part } from "../window/part.ts";

/** Something to have at hand. `kind` tells what is used up from what stays. */
export interface Supply {
  readonly kind: "material" | "tool";
  /** Of a computed supply that can be priced. */
  readonly id: Priced | undefined;
  readonly item: string;
  readonly quantity: number;
  /** Before it was rounded up to what can be bought, in the same unit. */
  readonly exact: number;
  readonly unit: string;
  /** Why, or which: sizes of this kit. */
  readonly note: string;
  /** For the whole quantity, in the kit's currency; undefined where the kit states none. */
  readonly price: number | undefined;
}

/** Cuts after which a craft-knife blade drags in book paper (common practice, no source). */
const CUTS_A_BLADE = 250;

/** Card for the scoring gauge and other small parts beside the window: one sheet. */
const GAUGE_SHEETS = 1;

/** How lengths are bought: the unit's name and its length, mm. */
const LENGTHS = {
  mm: { unit: "m", length: 1000 },
  in: { unit: "ft", length: 12 * MM_PER_INCH },
} as const;

/** Steps to the unit in which lengths are bought: 0.1 m, or 3 in. */
const STEPS: Readonly<Record<string, number>> = { m: 10, ft: 4 };

/** Everything that the kit needs, counted from it, with the kit's own supplies merged in. */
export function suppliesOf(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  return mergeOwn(
    [...materials(kit, pattern, counts), ...windowMaterials(kit, pattern), ...tools(kit, pattern, counts)],
    kit,
  );
}

/** Units that only count what the item's name says already. */
const COUNTED = ["book", "blades", "dots", "light", "button", "set", "piece", "pieces"];

/** A supply as people write it: `4 craft-knife blades`, `2 sheets of card`, `1.1 m of double-sided tape`. */
export function supplyLine(supply: Supply): string {
  return COUNTED.includes(supply.unit)
    ? `${supply.quantity} ${supply.item}`
    : `${supply.quantity} ${supply.unit} of ${supply.item}`;
}

/** Sum of all stated prices, or undefined where none is. */
export function costOf(supplies: readonly Supply[]): number | undefined {
  const priced = supplies.filter((supply) => supply.price !== undefined);
  return priced.length === 0 ? undefined : priced.reduce((sum, supply) => sum + supply.price!, 0);
}

/** A length as it is bought, in its unit (m or ft): up to the next step. Other things are bought whole. */
export function lengthToBuy(amount: number, unit: string): number {
  const steps = STEPS[unit] ?? 1;
  return Math.ceil(tidy(amount * steps)) / steps;
}

/** Whether a supply is measured out and not counted. */
export function isLength(unit: string): boolean {
  return unit in STEPS;
}

function materials(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  const { book } = pattern;
  const blades = Math.ceil((counts.cuts + counts.notches) / CUTS_A_BLADE) + (counts.parts > 0 ? 1 : 0);
  const windowDots = pattern.insert ? 8 : 0;
  return [
    material(
      kit,
      "book",
      "second-hand book",
      1,
      "book",
      `${book.leaves} leaves, leaf ${formatSize(book.leafHeight, kit.units)} high and ${formatSize(book.leafWidth, kit.units)} wide`,
    ),
    ...sheetSupplies(kit, pattern),
    ...(blades > 0
      ? [
          material(
            kit,
            "blades",
            blades === 1 ? "craft-knife blade" : "craft-knife blades",
            blades,
            "blades",
            `${counts.cuts + counts.notches} cuts in the book, a fresh blade every ${CUTS_A_BLADE}`,
          ),
        ]
      : []),
    ...(counts.tacks + windowDots > 0
      ? [
          material(
            kit,
            "glueDots",
            "glue dots",
            counts.tacks + windowDots,
            "dots",
            `${counts.tacks} for tacks${windowDots > 0 ? `, ${windowDots} for closure and motifs` : ""}`,
          ),
        ]
      : []),
  ];
}

/** Card and acetate by the sheet, packed on the kit's first sheet size that takes all parts of a material. */
function sheetSupplies(kit: Kit, pattern: Pattern): Supply[] {
  const parts = pattern.insert?.parts ?? [];
  const lines = kit.gaugeLines.length;
  const gauge = `${GAUGE_SHEETS} for the scoring gauge (${lines} ${lines === 1 ? "line" : "lines"})`;
  const card = sheetsFor(kit, parts, "card");
  const acetate = sheetsFor(kit, parts, "acetate");
  return [
    material(
      kit,
      "card",
      "card",
      card.count + GAUGE_SHEETS,
      card.count + GAUGE_SHEETS === 1 ? "sheet" : "sheets",
      card.count > 0 ? `${card.size}: ${gauge}, ${card.count} for the window and motifs` : `${card.size}: ${gauge}`,
    ),
    ...(acetate.count > 0
      ? [
          material(
            kit,
            "acetate",
            "acetate",
            acetate.count,
            acetate.count === 1 ? "sheet" : "sheets",
            `${acetate.size}, clear, for the glazing`,
          ),
        ]
      : []),
  ];
}

function sheetsFor(kit: Kit, parts: readonly Part[], wanted: Part["material"]): { count: number; size: string } {
  const own = parts.filter((part) => part.material === wanted);
  const layouts = kit.sheets.map((sheet) => layOut(own, sheet));
  const chosen = layouts.find((layout) => layout.tooLarge.length === 0) ?? layouts[0]!;
  const note = chosen.tooLarge.length > 0 ? ` (too small for ${chosen.tooLarge.join(", ")})` : "";
  return { count: chosen.sheets.length + chosen.tooLarge.length, size: `${chosen.sheet.name}${note}` };
}

function windowMaterials(kit: Kit, pattern: Pattern): Supply[] {
  const { insert } = pattern;
  const bought = LENGTHS[kit.units];
  const length = (mm: number): number => (mm * (1 + kit.waste)) / bought.length;
  const waste = kit.waste > 0 ? `, with ${Math.round(kit.waste * 100)} % for waste` : "";
  const light = kit.light && [
    material(
      kit,
      "light",
      "battery LED light",
      1,
      "light",
      `at most ${formatSize(kit.light.diameter, kit.units)} wide and ${formatSize(kit.light.height, kit.units)} high; measure it`,
    ),
    material(
      kit,
      "cells",
      kit.cells ?? "cells for the light",
      1,
      "set",
      "as the light's maker says; battery door closed with a screw",
    ),
  ];
  const window = insert && [
    material(
      kit,
      "tape",
      "double-sided tape",
      lengthToBuy(length(2 * insert.frameLength), bought.unit),
      bought.unit,
      `twice round the frame (${formatSize(insert.frameLength, kit.units)})${waste}`,
      length(2 * insert.frameLength),
    ),
    material(
      kit,
      "string",
      "string",
      lengthToBuy(length(insert.stringLength), bought.unit),
      bought.unit,
      `loop and knot of the closure${waste}`,
      length(insert.stringLength),
    ),
    material(kit, "button", "button", 1, "button", "for the closure"),
  ];
  return [...(light ?? []), ...(window ?? [])];
}

function tools(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  return [
    tool("bone folder or other blunt scoring tool", "to press the score lines and sharpen folds"),
    tool(
      "ruler with clear marks",
      kit.units === "mm" ? "in millimetres" : "in sixteenths or thirty-seconds of an inch",
    ),
    tool("soft pencil and eraser", "for the marks"),
    ...(counts.cuts + counts.notches + counts.parts > 0
      ? [tool("craft knife", "with a cap"), tool("cutting mat and metal safety ruler", "under and beside every cut")]
      : []),
    tool("packing", packingNote(kit, pattern)),
  ];
}

function packingNote(kit: Kit, pattern: Pattern): string {
  const height = formatSize(pattern.book.blockThickness, kit.units);
  if (kit.gaugeTile === undefined) return `card or tiles up to ${height} to keep the gauge level`;
  return `${Math.ceil(pattern.book.blockThickness / kit.gaugeTile)} tiles of ${formatSize(kit.gaugeTile, kit.units)}, together ${height}, to keep the gauge level`;
}

/** The kit's own supplies: one with the name of a computed one replaces its quantity and price, the others follow. */
function mergeOwn(computed: readonly Supply[], kit: Kit): Supply[] {
  const rest = [...kit.supplies];
  const merged = computed.map((supply) => {
    const at = rest.findIndex((own) => own.item.toLowerCase() === supply.item.toLowerCase());
    if (at < 0) return supply;
    const mine = rest.splice(at, 1)[0]!;
    const each = supply.price === undefined || mine.unit !== supply.unit ? undefined : supply.price / supply.quantity;
    const price = mine.price ?? (each === undefined ? undefined : Math.round(each * mine.quantity * 100) / 100);
    return { ...supply, quantity: mine.quantity, exact: mine.quantity, unit: mine.unit, price };
  });
  const follow = rest.map(
    (supply): Supply => ({ kind: "material", id: undefined, note: "", exact: supply.quantity, ...supply }),
  );
  return [
    ...merged.filter((one) => one.kind === "material"),
    ...follow,
    ...merged.filter((one) => one.kind === "tool"),
  ];
}

function material(
  kit: Kit,
  id: Priced,
  item: string,
  quantity: number,
  unit: string,
  note: string,
  exact = quantity,
): Supply {
  const each = kit.prices[id];
  return {
    kind: "material",
    id,
    item,
    quantity,
    exact,
    unit,
    note,
    price: each === undefined ? undefined : Math.round(each * quantity * 100) / 100,
  };
}

function tool(item: string, note: string): Supply {
  return { kind: "tool", id: undefined, item, quantity: 1, exact: 1, unit: "piece", note, price: undefined };
}
