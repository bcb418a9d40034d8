import type { Kit, Level, SheetSize } from "../../core/kit/kit.ts";
import { SHEET_SIZES, type SheetName } from "../../core/packing/sheet-sizes.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { indexOfTwin } from "../files/twins.ts";
import { levelNumber } from "../picture/level-number.ts";
import { resolveCard } from "./resolve-card.ts";
import type { FrontMatter } from "./schema.ts";

/** The light and the window with their levels by number, and the sheets for the parts. @throws ProblemError */
export function resolveWindow(
  { light, insert, sheets, units }: FrontMatter,
  levels: readonly Level[],
): Pick<Kit, "light" | "cells" | "insert" | "sheets"> {
  return {
    light: light && {
      level: light.in === undefined ? levels.length : levelNumber(light.in, levels, ["light", "in"]),
      diameter: light.diameter,
      height: light.height,
      clearance: light.clearance,
      setback: light.setback,
      floor: light.floor,
    },
    cells: light?.cells,
    insert: insert && {
      outline: levelNumber(insert.outline, levels, ["insert", "outline"]),
      lip: insert.lip,
      hinge: insert.hinge,
      panel: insert.panel,
      card: resolveCard(insert.card, ["insert", "card"]),
    },
    sheets: sheetsOf(sheets, units),
  };
}

/** Sheets as they are named or measured; without any, the usual ones, first the one of the units' own lands. @throws ProblemError where two have one name */
export function sheetsOf(sheets: readonly (SheetName | SheetSize)[] | undefined, units: UnitSystem): SheetSize[] {
  const usual = units === "mm" ? (["a4", "letter", "12x12"] as const) : (["letter", "a4", "12x12"] as const);
  const sizes = (sheets ?? usual).map((sheet) => (typeof sheet === "string" ? SHEET_SIZES[sheet] : sheet));
  const twice = indexOfTwin(sizes.map(({ name }) => name));
  if (twice < 0) return sizes;
  const advice = { given: say.frontSheetTwice({ sheet: sizes[twice]!.name }), allowed: say.frontSheetNames() };
  throw problem(["sheets", twice], { ...advice, remedy: say.frontRename() });
}
