import type { UnitSystem } from "../../core/units/length.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { num, tag, text } from "./svg-text.ts";

/** A true-scale sheet in mm: fits A4 and US Letter alike, inside the 198 × 267 mm that both can print. */
export const SHEET = { width: 182, height: 245 } as const;

/** Room kept free at the left (upright bar) and at the foot (level bar) of a true-scale sheet, mm. */
export const BAR_ROOM = { left: 10, foot: 18 } as const;

export const BAR_LENGTH = 100;
const BAR_WIDTH = 2;

/** What a ruler must show on the 100 mm bar, in words (common practice, no source). */
export const PASS_BAND = "99.5 to 100.5 mm is good";

/** Both calibration bars with their words and the printing steps; drawn at the sheet's left and foot. */
export function calibration(units: UnitSystem): string {
  const foot = SHEET.height - BAR_ROOM.foot + 5;
  const levelBar = bar(BAR_ROOM.left, foot, BAR_LENGTH, BAR_WIDTH);
  const uprightTop = SHEET.height - BAR_ROOM.foot - 2 - BAR_LENGTH;
  const uprightBar = bar(2, uprightTop, BAR_WIDTH, BAR_LENGTH);
  const captionY = uprightTop + BAR_LENGTH / 2;
  const words = [
    `100 mm across: ${PASS_BAND}`,
    "1 print at “actual size” or 100 %",
    "2 measure both bars with your ruler",
    "3 outside the band, change the scale",
    "4 print all true-scale sheets alike",
  ];
  const inch =
    units === "in"
      ? bar(BAR_ROOM.left, foot + 7.6, 4 * MM_PER_INCH, BAR_WIDTH) +
        text(BAR_ROOM.left, foot + 6.4, "4 in across: 3 31/32 to 4 1/32 in is good", SMALL)
      : "";
  return [
    text(BAR_ROOM.left, foot - 1.2, words[0]!, SMALL),
    levelBar,
    uprightBar,
    text(0, 0, `100 mm upright: ${PASS_BAND}`, {
      ...SMALL,
      transform: `translate(7.2 ${num(captionY)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
    inch,
    ...words.slice(1).map((line, i) => text(120, foot - 1.4 + i * 3.3, line, SMALL)),
  ].join("");
}

const SMALL = { "font-size": 2.6, fill: "#000" };

/** A bar as one closed outline of exactly its length, ticked by filled fields of 10 mm. */
function bar(x: number, y: number, width: number, height: number): string {
  const long = Math.max(width, height);
  const fields = Math.floor(long / 10 + 1e-9);
  const filled = Array.from({ length: Math.ceil(fields / 2) }, (_, i) => {
    const at = i * 20;
    const size = Math.min(10, long - at);
    return width > height
      ? tag("rect", { x: x + at, y, width: size, height })
      : tag("rect", { x, y: y + at, width, height: size });
  });
  return (
    tag("path", {
      class: "calibration",
      d: `M${num(x, 3)} ${num(y, 3)}h${num(width, 3)}v${num(height, 3)}h${num(-width, 3)}z`,
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.1,
    }) + tag("g", { fill: "#000" }, filled.join(""))
  );
}
