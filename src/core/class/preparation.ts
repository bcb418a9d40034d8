import { fileName } from "../packing/file-name.ts";
import type { Layout } from "../packing/lay-out.ts";
import type { SeatPart } from "./class-sheets.ts";

/** Pieces of one kind to cut for the class, in the order in which they are best cut. */
export interface PartCount {
  readonly kind: string;
  readonly material: SeatPart["part"]["material"];
  /** Pieces over all seats. */
  readonly count: number;
  readonly seats: readonly number[];
  /** Names of the merged cut sheets that they lie on: `card-a4-1`. */
  readonly sheets: readonly string[];
}

/** How many pieces of each kind, and on which sheets: large pieces first, as they are packed. */
export function partCounts(parts: readonly SeatPart[], sheets: readonly NamedSheet[]): PartCount[] {
  const kinds = [...new Set(parts.map((one) => `${one.part.material}|${one.kind}`))];
  return kinds.map((key) => {
    const own = parts.filter((one) => `${one.part.material}|${one.kind}` === key);
    const names = new Set(own.map(({ part }) => part.name));
    return {
      kind: own[0]!.kind,
      material: own[0]!.part.material,
      count: own.reduce((sum, { part }) => sum + part.count, 0),
      seats: [...new Set(own.map(({ seat }) => seat))],
      sheets: sheets.filter(({ sheet }) => sheet.parts.some((part) => names.has(part))).map(({ name }) => name),
    };
  });
}

/** A merged cut sheet with the name of its files. */
export interface NamedSheet {
  readonly name: string;
  readonly size: Layout["sheet"];
  readonly sheet: Layout["sheets"][number];
}

export function namedSheets(layouts: readonly Layout[]): NamedSheet[] {
  return layouts.flatMap((layout) =>
    layout.sheets.map((sheet) => ({
      name: `${sheet.material}-${fileName(layout.sheet.name)}-${sheet.number}`,
      size: layout.sheet,
      sheet,
    })),
  );
}
