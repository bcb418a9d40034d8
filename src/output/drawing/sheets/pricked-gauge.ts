import type { Kit } from "../../../core/kit/kit.ts";
import { type GaugeLine, gaugeLines } from "../../../core/plan/gauge-lines.ts";
import { gaugeSize } from "../../../core/plan/gauge-size.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { uprightPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import { cutOut, GAUGE } from "./gauge-strips.ts";
import { lineText } from "./gauge-words.ts";

const { left, top } = GAUGE;

/** Letters of a line that a level uses, and of another line. */
export const USED = { size: 3.4, weight: 600 } as const;
const UNUSED = { size: 2.8, weight: 400 } as const;

/**
 * The gauge whose lines are pricked: its left edge goes flush with the fore-edge, each numbered line stands at its distance
 * from it. Lines of the kit's levels are drawn full and carry the level's name; the gauge's other lines are thin.
 */
export function prickedGauge(kit: Kit): string {
  const { width, height } = gaugeSize(kit);
  return [
    cutOut(left, width, height),
    text(0, 0, say.drawGaugeFlush(), {
      "font-size": 3.2,
      transform: `translate(${num(left - 2)} ${num(top + height / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
    ...gaugeLines(kit).map((line, i) => lineOnGauge(line, i, height, kit.units)),
  ].join("");
}

/** How far below the gauge's top the words of a line begin: those of neighbours at different heights. */
export function footOf(index: number, height: number): number {
  return Math.min(65 + (index % 2) * 60, height - 4);
}

function lineOnGauge(line: GaugeLine, index: number, height: number, units: UnitSystem): string {
  const x = left + line.depth;
  const used = line.levels.length > 0;
  const foot = footOf(index, height);
  const { size, weight } = used ? USED : UNUSED;
  const words = lineText(line, units);
  return [
    tag("path", {
      d: uprightPath([x, top], height, 3),
      fill: "none",
      stroke: "#000",
      "stroke-width": used ? 0.3 : 0.15,
      "stroke-dasharray": used ? "3.6 0.9" : "1.8 0.9",
    }),
    ...holes(x, height, used),
    text(0, 0, words, {
      "font-size": sizeWithin(foot, words, size),
      "font-weight": weight,
      transform: `translate(${num(x + (used ? 3.6 : 3.1))} ${num(top + foot)}) rotate(-90)`,
    }),
    ...(used ? [levelNumbers(line, x, top + height + 4.4)] : []),
  ].join("");
}

/** Holes to prick along a line. */
function holes(x: number, height: number, used: boolean): string[] {
  return Array.from({ length: Math.floor(height / 20) }, (_, i) =>
    tag("circle", {
      cx: x,
      cy: top + 10 + i * 20,
      r: 0.5,
      fill: used ? "#000" : "none",
      stroke: "#000",
      "stroke-width": 0.15,
    }),
  );
}

function levelNumbers({ levels }: GaugeLine, x: number, y: number): string {
  return text(x, y, rowText(levels.map(({ number }) => String(number))), {
    "font-size": 4.4,
    "font-weight": 700,
    "text-anchor": "middle",
  });
}
