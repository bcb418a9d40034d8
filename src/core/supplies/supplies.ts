import type { Kit, OwnSupply } from "../kit/kit.ts";
import { type Priced, type SupplyId, type SupplyUnit, TOOL_SUPPLIES, type ToolSupply } from "../kit/supply-id.ts";
import { layOut } from "../packing/lay-out.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Counts } from "../plan/effort.ts";
import { workOf } from "../steps/work.ts";
import type { Part } from "../window/part.ts";
import { type BookWindow, partsOf } from "../window/window.ts";
import { type CardSheets, cardSheets } from "./card-sheets.ts";
import { BOUGHT_BY, toBuy } from "./lengths.ts";
import type { Supply, SupplyReason } from "./supply.ts";

/** Cuts after which a craft-knife blade drags in book paper (common practice, no source). */
const CUTS_A_BLADE = 250;

/** Glue dots under the button, and under a motif that lies flat; spacers stick by themselves (common practice, no source). */
const BUTTON_DOTS = 2;
const MOTIF_DOTS = 3;

/** Card for the scoring gauge and small pieces beside the window, such as the light's floor: one sheet. */
const GAUGE_SHEETS = 1;

/** Everything that the kit’s steps need, counted from it, with the kit's own supplies merged in. */
export function suppliesOf(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  const used = new Set(workOf(kit, pattern, counts).flatMap((step) => step.supplies));
  const computed = [
    ...bookSupplies(kit, pattern, counts),
    ...lightSupplies(kit),
    ...windowSupplies(kit, pattern),
    ...gluing(kit, pattern, used),
    ...TOOL_SUPPLIES.filter((id) => used.has(id)).map((id) => (id === "packing" ? packing(kit, pattern) : tool(id))),
  ];
  return mergeOwn(computed, kit.supplies);
}

/** Sum of all stated prices, or undefined where none is. */
export function costOf(supplies: readonly Supply[]): number | undefined {
  const priced = supplies.filter((supply) => supply.price !== undefined);
  return priced.length === 0 ? undefined : priced.reduce((sum, supply) => sum + supply.price!, 0);
}

function bookSupplies(kit: Kit, pattern: Pattern, counts: Counts): Supply[] {
  const { leaves, leafHeight, leafWidth } = pattern.book;
  const cuts = (kit.fit.cutWith === "knife" ? counts.cuts : 0) + counts.notches;
  const blades = Math.ceil(cuts / CUTS_A_BLADE) + (counts.parts > 0 ? 1 : 0);
  const window = pattern.window ? windowDots(pattern.window) : 0;
  const tacks = kit.fit.tackWith === "dots" ? counts.tacks : 0;
  const dots = tacks + window;
  return [
    material(kit, "book", 1, "each", { kind: "book", leaves, leafHeight, leafWidth }),
    ...sheetSupplies(kit, pattern),
    ...(blades > 0 ? [material(kit, "blades", blades, "each", { kind: "blades", cuts, perBlade: CUTS_A_BLADE })] : []),
    ...(dots > 0 ? [material(kit, "glueDots", dots, "each", { kind: "glue-dots", tacks, window })] : []),
  ];
}

/** Glue dots for closure and motifs. */
function windowDots({ motifs }: BookWindow): number {
  return motifs.reduce((sum, { count, spacers }) => sum + (spacers === 0 ? count * MOTIF_DOTS : 0), BUTTON_DOTS);
}

/** Card and acetate by the sheet, packed on the kit's first sheet size that takes all parts of a material. */
function sheetSupplies(kit: Kit, pattern: Pattern): Supply[] {
  const parts = partsOf(pattern.window);
  const acetate = sheetsFor(kit, parts, "acetate");
  const lines = kit.gaugeLines.length;
  const { sheet, tooLarge, count, colours } = sheetsFor(kit, parts, "card");
  const ofColours = colours.length > 0 ? { colours } : {};
  const why = { kind: "card", sheet, tooLarge, gauge: GAUGE_SHEETS, lines, window: count, ...ofColours } as const;
  return [
    material(kit, "card", count + GAUGE_SHEETS, "sheet", why),
    ...(acetate.count > 0 ? [acetateSupply(kit, acetate)] : []),
  ];
}

function acetateSupply(kit: Kit, { count, sheet, tooLarge }: SheetsNeeded): Supply {
  return material(kit, "acetate", count, "sheet", { kind: "acetate", sheet, tooLarge });
}

/** Sheets of a material: a part that is too large for them counts as one. */
interface SheetsNeeded {
  readonly count: number;
  readonly sheet: string;
  readonly tooLarge: readonly Part[];
  readonly colours: readonly CardSheets[];
}

function sheetsFor(kit: Kit, parts: readonly Part[], wanted: Part["material"]): SheetsNeeded {
  const own = parts.filter((part) => part.material === wanted);
  const layouts = kit.sheets.map((sheet) => layOut(own, sheet));
  const { sheets, sheet, tooLarge } = layouts.find((layout) => layout.tooLarge.length === 0) ?? layouts[0]!;
  const cut = [...sheets, ...tooLarge];
  return { count: cut.length, sheet: sheet.name, tooLarge, colours: cardSheets(cut) };
}

function lightSupplies(kit: Kit): Supply[] {
  if (!kit.light) return [];
  const { diameter, height } = kit.light;
  const cells = material(kit, "cells", 1, "set", { kind: "cells" });
  return [
    material(kit, "light", 1, "each", { kind: "light", diameter, height }),
    kit.cells === undefined ? cells : { ...cells, own: { item: kit.cells, unit: "" } },
  ];
}

function windowSupplies(kit: Kit, { window }: Pattern): Supply[] {
  if (!window) return [];
  const { unit, length } = BOUGHT_BY[kit.units];
  const { waste } = kit;
  const bought = (id: Priced, mm: number, reason: SupplyReason): Supply => {
    const exact = (mm * (1 + waste)) / length;
    return material(kit, id, toBuy(exact, unit), unit, reason, exact);
  };
  return [
    bought("tape", 2 * window.frameLength, { kind: "tape", frame: window.frameLength, waste }),
    bought("string", window.stringLength, { kind: "string", waste }),
    material(kit, "button", 1, "each", { kind: "button" }),
  ];
}

/** What is bought once for all gluing, and the spacers of raised motifs. */
function gluing(kit: Kit, { window }: Pattern, used: ReadonlySet<SupplyId>): Supply[] {
  const once = (["glue", "bakingPaper"] as const).filter((id) => used.has(id));
  const spacers = (window?.motifs ?? []).reduce((sum, motif) => sum + motif.count * motif.spacers, 0);
  return [
    ...once.map((id) => material(kit, id, 1, "each", { kind: "tool" })),
    ...(spacers > 0 ? [material(kit, "spacers", spacers, "each", { kind: "tool" })] : []),
  ];
}

function packing({ gaugeTile: piece }: Kit, { book: { blockThickness: height } }: Pattern): Supply {
  const pieces = piece === undefined ? 0 : Math.ceil(height / piece);
  return { ...tool("packing"), reason: { kind: "packing", height, piece, pieces } };
}

/** The kit's own supplies: one that is a computed one replaces its quantity and price, the others follow. */
export function mergeOwn(computed: readonly Supply[], own: readonly OwnSupply[]): Supply[] {
  const rest = [...own];
  const merged = computed.map((supply) => {
    const at = rest.findIndex((one) => one.id === supply.id);
    return at < 0 ? supply : restated(supply, rest.splice(at, 1)[0]!);
  });
  return [
    ...merged.filter((one) => one.kind === "material"),
    ...rest.map(ownSupply),
    ...merged.filter((one) => one.kind === "tool"),
  ];
}

function restated(supply: Supply, own: OwnSupply): Supply {
  const { quantity, unitId } = own;
  const each = supply.price === undefined || unitId !== supply.unit ? undefined : supply.price / supply.quantity;
  return {
    ...supply,
    own: unitId === supply.unit ? supply.own : { item: own.item, unit: own.unit },
    quantity,
    exact: quantity,
    unit: unitId,
    price: own.price ?? (each === undefined ? undefined : cents(each * quantity)),
  };
}

function ownSupply({ item, unit, unitId, quantity, price }: OwnSupply): Supply {
  return {
    kind: "material",
    id: undefined,
    own: { item, unit },
    quantity,
    exact: quantity,
    unit: unitId,
    reason: undefined,
    price,
  };
}

export function material(
  kit: Kit,
  id: Priced,
  quantity: number,
  unit: SupplyUnit,
  reason: SupplyReason,
  exact = quantity,
): Supply {
  const each = kit.prices[id];
  const price = each === undefined ? undefined : cents(each * quantity);
  return { kind: "material", id, own: undefined, quantity, exact, unit, reason, price };
}

export function tool(id: ToolSupply): Supply {
  return {
    kind: "tool",
    id,
    own: undefined,
    quantity: 1,
    exact: 1,
    unit: "each",
    reason: { kind: "tool" },
    price: undefined,
  };
}

/** An amount of money to the hundredth. */
function cents(amount: number): number {
  return Math.round(amount * 100) / 100;
}
