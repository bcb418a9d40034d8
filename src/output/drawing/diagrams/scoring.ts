import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { batchesOf } from "../../../core/plan/batches.ts";
import { type GaugeLine, gaugeLines } from "../../../core/plan/gauge-lines.ts";
import { stepFor, type UnitSystem } from "../../../core/units/length.ts";
import { formatLength, formatSize } from "../../../words/lengths.ts";
import { listText, rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { gaugeOnLeaf } from "./gauge-on-leaf.ts";
import { diagram } from "./ink.ts";
import { penFor } from "./pen.ts";
import { supportBelow } from "./support-below.ts";

/** The gauge flush with the fore-edge, its lines with their distances, and the packing that keeps the working side level. */
export function scoring(kit: Kit, pattern: Pattern): Figure {
  const lines = gaugeLines(kit);
  const batches = batchesOf(pattern, kit.fit.batch, kit.gaugeTile);
  const batch = batches[Math.floor(batches.length / 2)]!;
  const packing = formatLength(batch.packing, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
  const label = say.drawScoring({
    lines: rowText(lines.map((line) => lineText(line, kit.units))),
    packing,
    leaf: batch.first.leaf,
  });
  const pen = penFor(kit.book.direction);
  return diagram(73, label, [gaugeOnLeaf(pen, kit, lines), supportBelow(pen, kit, batch, packing)]);
}

function lineText(line: GaugeLine, units: UnitSystem): string {
  const depth = formatSize(line.depth, units);
  const levels = listText(line.levels.map(({ name }) => name));
  if (line.number === undefined) return say.drawScoringOwnLine({ depth, levels });
  return line.levels.length > 0
    ? say.drawScoringUsedLine({ line: line.number, depth, levels })
    : say.drawScoringLine({ line: line.number, depth });
}
