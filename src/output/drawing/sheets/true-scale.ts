import type { UnitSystem } from "../../../core/units/length.ts";
import { MM_PER_INCH } from "../../../core/units/length.ts";
import { formatDepth, sayLength } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { boxPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";

/** A true-scale sheet in mm: fits A4 and US Letter alike, inside the 198 × 267 mm that both can print. */
export const SHEET = { width: 182, height: 245 } as const;

/** Room kept free at the left (upright bar) and at the foot (level bar) of a true-scale sheet, mm. */
export const BAR_ROOM = { left: 10, foot: 18 } as const;

export const BAR_LENGTH = 100;
const BAR_WIDTH = 2;

const INCH_BAR = 4 * MM_PER_INCH;

/** How far a bar may measure from its length on a good print: 0.5 mm, or 1/32 in (common practice, no source). */
const TOLERANCE: Readonly<Record<UnitSystem, number>> = { mm: 0.5, in: MM_PER_INCH / 32 };

const SMALL = { "font-size": 2.6 };

/** The id of what all sheets have in common. */
export const BARS = "bars";

/** Both calibration bars with their words and the printing steps; drawn at the sheet's left and foot. */
export function calibration(units: UnitSystem): string {
  const foot = SHEET.height - BAR_ROOM.foot + 5;
  const uprightTop = SHEET.height - BAR_ROOM.foot - 2 - BAR_LENGTH;
  const steps = [say.drawBarPrint(), say.drawBarMeasure(), say.drawBarChange(), say.drawBarAlike()];
  const drawn = [
    text(BAR_ROOM.left, foot - 1.2, say.drawBarAcross(passBand(BAR_LENGTH, "mm")), SMALL),
    bar(BAR_ROOM.left, foot, BAR_LENGTH, BAR_WIDTH),
    bar(2, uprightTop, BAR_WIDTH, BAR_LENGTH),
    text(0, 0, say.drawBarUpright(passBand(BAR_LENGTH, "mm")), {
      ...SMALL,
      transform: `translate(7.2 ${num(uprightTop + BAR_LENGTH / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
    ...(units === "in" ? [inchBar(foot)] : []),
    ...steps.map((step, i) => text(120, foot - 1.4 + i * 3.3, step, SMALL)),
  ];
  return tag("g", { id: BARS }, drawn.join(""));
}

function inchBar(foot: number): string {
  return (
    bar(BAR_ROOM.left, foot + 7.6, INCH_BAR, BAR_WIDTH) +
    text(BAR_ROOM.left, foot + 6.4, say.drawBarAcross(passBand(INCH_BAR, "in")), SMALL)
  );
}

/** A bar's length, and what a ruler may show on it. */
function passBand(length: number, units: UnitSystem): { length: string; least: string; most: string } {
  return {
    length: sayLength(length, units),
    least: formatDepth(length - TOLERANCE[units], units),
    most: sayLength(length + TOLERANCE[units], units),
  };
}

/** A bar as one closed outline of exactly its length, ticked by filled fields of 10 mm. */
function bar(x: number, y: number, width: number, height: number): string {
  const long = Math.max(width, height);
  const fields = Math.floor(long / 10 + 1e-9);
  const filled = Array.from({ length: Math.ceil(fields / 2) }, (_, i) => {
    const at = i * 20;
    const size = Math.min(10, long - at);
    return width > height ? boxPath(x + at, y, size, height) : boxPath(x, y + at, width, size);
  });
  return (
    tag("path", {
      class: "calibration",
      d: boxPath(x, y, width, height, 3),
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.1,
    }) + tag("path", { d: filled.join("") })
  );
}
