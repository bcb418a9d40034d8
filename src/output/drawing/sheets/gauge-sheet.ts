import type { Kit } from "../../../core/kit/kit.ts";
import { gaugeLines } from "../../../core/plan/gauge-lines.ts";
import { gaugeSize } from "../../../core/plan/gauge-size.ts";
import * as say from "../../../words/messages.ts";
import { text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import { GAUGE, placedStrips, stripOnSheet } from "./gauge-strips.ts";
import { lineText } from "./gauge-words.ts";
import { footOf, prickedGauge, USED } from "./pricked-gauge.ts";
import { calibration, SHEET } from "./true-scale.ts";

/**
 * Both scoring gauges to cut out at true scale: the pricked one, and strips with one straight edge for each line in use,
 * which go on to further sheets where the first has no room.
 */
export function gaugeSheets(kit: Kit): string[] {
  const { height } = gaugeSize(kit);
  const strips = placedStrips(kit);
  return Array.from({ length: strips.at(-1)!.sheet + 1 }, (_, page) =>
    [
      ...[say.drawGaugeMake(), say.drawGaugePricked(), say.drawGaugeStrips()].map(headLine),
      ...(page === 0 ? [prickedGauge(kit)] : []),
      ...strips.filter(({ sheet }) => sheet === page).map((strip) => stripOnSheet(strip, height, kit.units)),
      calibration(kit.units),
    ].join(""),
  );
}

/** A line of words above what is cut out, which ends within the sheet. */
function headLine(words: string, i: number): string {
  const { left, top } = GAUGE;
  return text(left, top - 10 + i * 4, words, { "font-size": sizeWithin(SHEET.width - left, words, 3) });
}

/** Words on the gauge, which are drawn smaller where their room is short of them; mm. */
export interface GaugeWords {
  /** Numbers of the levels that they name. */
  readonly levels: readonly number[];
  readonly words: string;
  readonly room: number;
  readonly size: number;
}

/** All words of the pricked gauge that name levels; on a strip they have more room. */
export function gaugeWords(kit: Kit): GaugeWords[] {
  const { height } = gaugeSize(kit);
  return gaugeLines(kit).flatMap((line, i) => {
    const levels = line.levels.map(({ number }) => number);
    if (levels.length === 0) return [];
    return [{ levels, words: lineText(line, kit.units), room: footOf(i, height), size: USED.size }];
  });
}
