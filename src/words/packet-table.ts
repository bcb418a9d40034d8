import type { Kit, Level } from "../core/kit/kit.ts";
import type { Pattern } from "../core/pattern/pattern.ts";
import { rowText } from "./lists.ts";
import * as say from "./messages.ts";
import { shortName } from "./short-name.ts";
import { unitName } from "./units.ts";

/** What stands above a printed table: how its marks are read, and the levels. */
export function tableIntroduction({ units }: Pick<Kit, "units">, { fit, levels }: Pattern): string {
  const words = { units: unitName(units), levels: rowText(levels.map(levelText)) };
  return fit.foldStyle === "stepped"
    ? say.packetTableTextStepped({ ...words, level: shortName(levels[0]!.name) })
    : say.packetTableText(words);
}

function levelText({ name: whole, line }: Pick<Level, "name" | "line">, index: number): string {
  const number = index + 1;
  const name = shortName(whole);
  return line === undefined ? say.packetTableLevel({ number, name }) : say.packetTableLevelLine({ number, name, line });
}

/** What a sheet of the table ends with, for checking it. */
export interface SheetEnd {
  /** Leaves and cuts on this sheet, cuts up to and with it, and in all. */
  readonly leaves: number;
  readonly cuts: number;
  readonly sofar: number;
  readonly all: number;
  /** The leaf that ends the pattern, on the last sheet. */
  readonly lastLeaf: number | undefined;
}

/** The sums at the foot of a sheet, and what follows them: where the pattern ends, or what shaded rows mean. */
export function tableFoot({ lastLeaf, ...sums }: SheetEnd): { readonly sums: string; readonly end: string } {
  const end = lastLeaf === undefined ? say.packetTableShaded() : say.packetTableLast({ leaf: lastLeaf });
  return { sums: say.packetTableCheck(sums), end };
}
