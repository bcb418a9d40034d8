import type { SheetLayout } from "../packing/lay-out.ts";
import { sheetNames } from "../packing/sheet-sizes.ts";
import type { Card } from "../window/card.ts";
import type { PartKind } from "../window/part.ts";
import { type SeatPart, seatsOfPart } from "./class-sheets.ts";

/** Pieces of one kind to cut for the class, in the order in which they are best cut. */
export interface PartCount {
  readonly kind: PartKind;
  /** A motif's own name. */
  readonly motif: string | undefined;
  readonly material: SeatPart["material"];
  /** Colour of the card, where the kit states it. */
  readonly card?: Card;
  /** Pieces over all seats. */
  readonly count: number;
  readonly seats: readonly number[];
  /** Names of the merged cut sheets that they lie on: `card-a4-1`. */
  readonly sheets: readonly string[];
}

/** How many pieces of each kind, and on which sheets: large pieces first, as they are packed. */
export function partCounts(parts: readonly SeatPart[], sheets: readonly NamedSheet[]): PartCount[] {
  const groups = Map.groupBy(parts, ({ material, id, card }) => JSON.stringify([material, id, card?.name]));
  return [...groups.values()].map((own) => {
    const { kind, motif, material, card } = own[0]!;
    return {
      kind,
      motif,
      material,
      ...(card ? { card } : {}),
      count: own.reduce((sum, { count }) => sum + count, 0),
      seats: [...new Set(own.flatMap(seatsOfPart))],
      sheets: sheets.filter(({ sheet }) => sheet.parts.some((part) => own.includes(part))).map(({ name }) => name),
    };
  });
}

/** A merged cut sheet with the name of its files. */
export interface NamedSheet {
  readonly name: string;
  readonly size: SheetLayout["sheet"];
  readonly sheet: SheetLayout<SeatPart>["sheets"][number];
}

export function namedSheets(layouts: readonly SheetLayout<SeatPart>[]): NamedSheet[] {
  const names = sheetNames(layouts.map(({ sheet }) => sheet));
  return layouts.flatMap((layout, i) =>
    layout.sheets.map((sheet) => ({
      name: `${sheet.material}-${names[i]!}-${sheet.number}`,
      size: layout.sheet,
      sheet,
    })),
  );
}
