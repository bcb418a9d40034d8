import { writePlates } from "../book/plates.ts";
import { OF_A_BOOK, type Refit } from "../refit/refit.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import { tidy } from "../units/length.ts";

/** The columns of a seat's row, as a books table names them. */
export const ROW_COLUMNS: readonly string[] = ["seat", "kit", ...OF_A_BOOK, "pace", "foldStyle"];

/** A seat's row before its book: its number, a kit's folder, its own pace where that is not the class's, and its own way to make the leaves. */
export interface RowOf {
  readonly seat: number;
  readonly kit: string;
  readonly pace?: number | undefined;
  readonly foldStyle?: FoldStyle | undefined;
}

/** A seat's row for a books table: cells in the order of `ROW_COLUMNS`, lengths in mm, separated by commas; no cell needs quotes. */
export function seatRow({ seat, kit, pace, foldStyle }: RowOf, book: Refit): string {
  return [String(seat), kit, ...OF_A_BOOK.map((key) => cellOf(book[key])), pace ?? "", foldStyle ?? ""].join(",");
}

function cellOf(figure: Refit[(typeof OF_A_BOOK)[number]]): string {
  if (figure === undefined) return "";
  if (typeof figure === "number") return String(tidy(figure));
  return typeof figure === "string" ? figure : writePlates(figure, "address");
}
