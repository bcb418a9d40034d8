import type { Kit } from "../../../core/kit/kit.ts";
import { type GaugeLine, gaugeLines } from "../../../core/plan/gauge-lines.ts";
import { gaugeSize } from "../../../core/plan/gauge-size.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { boxPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import { stripText } from "./gauge-words.ts";
import { BAR_ROOM, SHEET } from "./true-scale.ts";

/** Upper left corner of the pricked gauge on its sheet, mm. */
export const GAUGE = { left: BAR_ROOM.left + 14, top: 18 } as const;

/** Between what is cut out, mm. */
const GAP = 4;

/** Letters on a strip, mm, and at most as a share of its width. */
const LETTERS = 3.4;
const SHARE = 0.7;

/** A strip of the gauge: as wide as its line's distance from the fore-edge, so that its far edge is the line. */
export interface GaugeStrip {
  readonly line: GaugeLine;
  /** The sheet that it is drawn on, 0 beside the pricked gauge, and its left edge there, mm. */
  readonly sheet: number;
  readonly x: number;
}

/** A strip for each line that a level uses: beside the pricked gauge, then on sheets of their own. */
export function placedStrips(kit: Kit): GaugeStrip[] {
  let sheet = 0;
  let x = GAUGE.left + gaugeSize(kit).width + GAP;
  return gaugeLines(kit)
    .filter(({ levels }) => levels.length > 0)
    .map((line) => {
      if (x + line.depth > SHEET.width) {
        sheet += 1;
        x = BAR_ROOM.left + GAP;
      }
      const strip = { line, sheet, x };
      x += line.depth + GAP;
      return strip;
    });
}

/** The outline of what is cut out, from its left edge. */
export function cutOut(x: number, width: number, height: number): string {
  return tag("path", {
    d: boxPath(x, GAUGE.top, width, height, 3),
    fill: "none",
    stroke: "#000",
    "stroke-width": 0.35,
  });
}

/** Its outline, and along its middle what it is for. */
export function stripOnSheet({ line, x }: GaugeStrip, height: number, units: UnitSystem): string {
  const words = stripText(line, units);
  const size = Math.min(LETTERS, SHARE * line.depth);
  return (
    cutOut(x, line.depth, height) +
    text(0, 0, words, {
      "font-size": sizeWithin(height - GAP, words, size),
      "font-weight": 600,
      transform: `translate(${num(x + line.depth / 2 + size / 3)} ${num(GAUGE.top + height / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    })
  );
}
