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
