import type { KitClass } from "../../core/class/kit-class.ts";
import type { SheetSize } from "../../core/kit/kit.ts";
import { SHEET_SIZES } from "../../core/packing/sheet-sizes.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import type { ClassMatter } from "./schema.ts";

/** What a class states of prices. @throws ProblemError where a price is of a sheet that the class does not have */
export function pricesOf(
  { prices: { page, ...prices }, sheetPrices, packs }: Pick<ClassMatter, "prices" | "sheetPrices" | "packs">,
  sheets: readonly SheetSize[],
): Pick<KitClass, "prices" | "pagePrice" | "sheetPrices" | "packs"> {
  return {
    prices,
    pagePrice: page,
    sheetPrices: sheetPrices.map(({ sheet, card, acetate }, i) => ({
      sheet: nameOfSheet(sheet, sheets, i),
      card,
      acetate,
    })),
    packs,
  };
}

function nameOfSheet(stated: string, sheets: readonly SheetSize[], i: number): string {
  const known = new Map(Object.entries(SHEET_SIZES).map(([key, { name }]) => [key, name as string]));
  const name = known.get(stated) ?? stated;
  if (sheets.some((one) => one.name === name)) return name;
  throw problem(["sheetPrices", i, "sheet"], {
    given: say.frontGivenText({ value: shortValue(stated) }),
    allowed: say.frontSheetOfClass({ sheets: nameList(sheets.map((one) => one.name)) }),
    remedy: say.frontCorrectName(),
  });
}
