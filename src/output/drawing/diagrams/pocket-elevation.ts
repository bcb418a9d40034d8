import type { Pocket } from "../../../core/light/light.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { wordsWidth } from "../words-width.ts";
import { diagram, GLOW, PAPER, POSITION, TEXT, THIN } from "./ink.ts";
import { penFor } from "./pen.ts";

/** The leaf's head, and the most that the opened book takes. */
const TOP = 5;
const BOOK = { width: 62, height: 62 } as const;

/** How much of the book is drawn beyond the picture, mm of the book. */
const BESIDE = 8;

/** The pocket from the front: the leaf's height with the picture's box, and the light on its floor. */
export function pocketElevation(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const { fit, book } = pattern;
  const { light, centre, floor } = pocket;
  const [floorText, heightText] = [formatSize(floor, units), formatSize(light.height, units)];
  const width = fit.width + 2 * BESIDE;
  const scale = Math.min(BOOK.width / width, BOOK.height / book.leafHeight);
  const x = (mm: number): number => 37 + mm * scale;
  const y = (mm: number): number => TOP + mm * scale;
  const [left, right] = [x(-width / 2), x(width / 2)];
  const [side, end] = [x(centre.x - light.diameter / 2), x(centre.x + light.diameter / 2)];
  const pen = penFor("ltr");
  const name = say.drawLight();
  const inside = wordsWidth(name, TEXT) < end - side - 1;
  const label = say.drawPocketElevation({
    floor: floorText,
    height: heightText,
    clearance: formatSize(light.clearance, units),
  });
  return diagram(y(book.leafHeight) + 1, label, [
    pen.box([left, TOP], [right, y(book.leafHeight)], PAPER),
    pen.box([x(-fit.width / 2), y(fit.head)], [x(fit.width / 2), y(fit.head + fit.height)], "none", POSITION),
    pen.box([side, y(floor - light.height)], [end, y(floor)], GLOW),
    pen.segment(side, y(floor), right, y(floor), THIN),
    pen.down(right + 5, TOP, y(floor), floorText, { from: right, side: "right" }),
    pen.down(side - 2, y(floor - light.height), y(floor), heightText),
    pen.words([inside ? (side + end) / 2 : end + 1.6, y(floor - light.height / 2) + 1], name, {
      anchor: inside ? "middle" : "start",
    }),
    pen.words([x(0), TOP - 1.2], say.drawHeadEdge(), { anchor: "middle" }),
  ]);
}
