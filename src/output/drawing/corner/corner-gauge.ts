import type { Point } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import { cornerGaugeRing, cornerGaugeWidth, foldingCardSize } from "../../../core/plan/corner-gauge.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { boxPath, ringPath } from "../path.ts";
import { BAR_ROOM, calibration, SHEET } from "../sheets/true-scale.ts";
import { num, tag, text } from "../svg-text.ts";
import { lettersWithin } from "../words-width.ts";

const LEFT = BAR_ROOM.left + 6;
const TOP = 20;
const GAP = 6;

const OUTLINE = { fill: "none", stroke: "#000", "stroke-width": 0.35 };

/**
 * What is cut out to fold by, at true scale: the corner gauge, whose straight side goes along the fore-edge with its point at a
 * mark, so that its slanted side is the crease of 45°; and the card that whole leaves are folded over, as wide as their fold is
 * from the fore-edge. On a second sheet where the first has no room.
 */
export function cornerGaugeSheets(kit: Kit, pattern: CornerPattern): string[] {
  const wide = cornerGaugeWidth(pattern);
  const size = foldingCardSize(pattern);
  const beside = LEFT + wide + GAP;
  const gauge = gaugeAt(wide, kit.book.direction === "rtl");
  const lines = [say.drawCornerGaugeMake(), say.drawCornerGaugeUse(), say.drawCornerGaugeTurn()].map(headLine).join("");
  const card = (x: number): string => (size ? cardAt(x, size, kit) : "");
  const sheets =
    size === undefined || beside + size.width <= SHEET.width ? [gauge + card(beside)] : [gauge, card(LEFT)];
  return sheets.map((drawn) => lines + drawn + calibration(kit.units));
}

/** The gauge from the printed side, as for the corner above: its straight side where the page before the hands has its fore-edge. */
function gaugeAt(wide: number, isLeft: boolean): string {
  const right = LEFT + wide;
  const point = TOP + wide;
  const along = (fromRight: number): number => (isLeft ? LEFT + fromRight : right - fromRight);
  const ring = cornerGaugeRing(wide).map(([x, y]): Point => [along(wide - x), TOP + y]);
  const foot = Math.max(...ring.map(([, y]) => y));
  const straight = foot - point;
  const upright = (x: number, words: string, size: number): string =>
    text(0, 0, words, {
      ...lettersWithin(straight - 2, words, size),
      transform: `translate(${num(x)} ${num(point + straight / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    });
  return [
    tag("path", {
      d: ringPath(ring),
      class: "corner-gauge",
      ...OUTLINE,
    }),
    upright(along(isLeft ? 4.6 : 2.2), say.drawCornerGaugeFlush(), 3.2),
    text(along(5), point + 3.5, say.drawCornerGaugePoint(), {
      ...lettersWithin(wide - 6, say.drawCornerGaugePoint(), 3),
      "text-anchor": isLeft ? "start" : "end",
    }),
    text(along(wide - 3), foot - 4, say.drawCornerGaugeName(), {
      ...lettersWithin(wide - 10, say.drawCornerGaugeName(), 4),
      "font-weight": 700,
      "text-anchor": isLeft ? "end" : "start",
    }),
  ].join("");
}

function cardAt(
  x: number,
  { width: wide, height }: { readonly width: number; readonly height: number },
  kit: Kit,
): string {
  const words = `${say.drawCornerCardName({ depth: formatSize(wide, kit.units) })}: ${say.drawCornerCardUse()}`;
  return (
    tag("path", { d: boxPath(x, TOP, wide, height, 3), class: "folding-card", ...OUTLINE }) +
    text(0, 0, words, {
      ...lettersWithin(height - GAP, words, Math.min(3.4, 0.7 * wide)),
      "font-weight": 600,
      transform: `translate(${num(x + wide / 2 + 1)} ${num(TOP + height / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    })
  );
}

/** A line of words above what is cut out, which ends within the sheet. */
function headLine(words: string, i: number): string {
  return text(LEFT, 8 + i * 4, words, lettersWithin(SHEET.width - LEFT, words, 3));
}
