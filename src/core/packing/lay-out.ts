import type { Point } from "../geometry/point.ts";
import type { SheetSize } from "../kit/kit.ts";
import type { Card } from "../window/card.ts";
import type { Part } from "../window/part.ts";
import { type Pack, type PlacedPart, packParts } from "./pack.ts";

/** Free edge of a sheet, mm. */
export const EDGE = 8;

/** Where a part lies on its sheet, mm from the sheet's upper left corner. */
export interface PartPlace<P extends Part = Part> {
  readonly part: P;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** From the part's own frame to the sheet's. */
  readonly onSheet: (point: Point) => Point;
}

/** One sheet of a material with the parts that are cut from it. */
export interface LaidSheet<P extends Part = Part> {
  readonly material: Part["material"];
  /** Colour of the card, where the kit states it. */
  readonly card?: Card;
  /** From 1 for each material, whatever its colours. */
  readonly number: number;
  readonly parts: readonly P[];
  readonly places: readonly PartPlace<P>[];
}

/** Parts laid on sheets of one size, and those that are too large for it. */
export interface SheetLayout<P extends Part = Part> {
  readonly sheet: SheetSize;
  readonly sheets: readonly LaidSheet<P>[];
  readonly tooLarge: readonly P[];
}

/** Lays parts on as few sheets as the packing finds, each material and each colour of card apart; something to measure stands on each. */
export function layOut<P extends Part>(parts: readonly P[], sheet: SheetSize, pack: Pack = packParts): SheetLayout<P> {
  const materials = [...new Set(parts.map(({ material }) => material))];
  const stocks = materials.flatMap((material) => {
    const own = parts.filter((part) => part.material === material);
    return [...Map.groupBy(own, ({ card }) => card?.name).values()];
  });
  const packings = stocks.map((own) => ({
    stock: own[0]!,
    ...pack(own, sheet.width - 2 * EDGE, sheet.height - 2 * EDGE),
  }));
  const numbers = { card: 0, acetate: 0, paper: 0 };
  return {
    sheet,
    sheets: packings.flatMap(({ stock, fields }) =>
      fields.map((field) => {
        numbers[stock.material] += 1;
        return laidSheet(stock, numbers[stock.material], field);
      }),
    ),
    tooLarge: packings.flatMap(({ tooLarge }) => tooLarge),
  };
}

/**
 * Lays parts on the first of several sheet sizes that takes them; a part larger than one size goes on to the next. Layouts
 * without a sheet are left out; the last one names what no size takes.
 */
export function layOutOnSizes<P extends Part>(
  parts: readonly P[],
  sizes: readonly SheetSize[],
  pack: Pack = packParts,
): SheetLayout<P>[] {
  let rest = parts;
  const layouts: SheetLayout<P>[] = [];
  for (const [i, size] of sizes.entries()) {
    const layout = layOut(rest, size, pack);
    rest = rest.filter((part) => layout.tooLarge.includes(part));
    const isLast = i === sizes.length - 1;
    if (layout.sheets.length > 0 || (isLast && rest.length > 0))
      layouts.push({ ...layout, tooLarge: isLast ? layout.tooLarge : [] });
  }
  return layouts;
}

function laidSheet<P extends Part>(
  { material, card }: Pick<Part, "material" | "card">,
  number: number,
  field: readonly PlacedPart<P>[],
): LaidSheet<P> {
  return {
    material,
    ...(card ? { card } : {}),
    number,
    parts: field.map(({ part }) => part),
    places: field.map(({ part, place, x, y, width, height }) => ({
      part,
      x: x + EDGE,
      y: y + EDGE,
      width,
      height,
      onSheet: (point) => {
        const [right, down] = place(point);
        return [right + EDGE, down + EDGE];
      },
    })),
  };
}
