import type { GaugeLine } from "../../../core/plan/gauge-lines.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { shortName } from "../../../words/short-name.ts";

/** What stands along a line of the pricked gauge. */
export function lineText(line: GaugeLine, units: UnitSystem): string {
  const depth = formatSize(line.depth, units);
  const levels = levelsText(line);
  if (line.number === undefined) return say.drawGaugeOwnLine({ levels, depth });
  return line.levels.length > 0
    ? say.drawGaugeUsedLine({ levels, line: line.number, depth })
    : say.drawGaugeLine({ line: line.number, depth });
}

/** What stands on the strip of a line that levels use. */
export function stripText(line: GaugeLine, units: UnitSystem): string {
  const depth = formatSize(line.depth, units);
  const levels = levelsText(line);
  return line.number === undefined
    ? say.drawGaugeOwnStrip({ levels, depth })
    : say.drawGaugeStrip({ levels, line: line.number, depth });
}

function levelsText({ levels }: GaugeLine): string {
  return rowText(levels.map(({ number, name }) => say.drawGaugeLevel({ number, level: shortName(name) })));
}
