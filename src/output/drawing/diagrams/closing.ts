import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { closingFace } from "./closing-face.ts";
import { closingPlace } from "./closing-place.ts";
import { closingSection } from "./closing-section.ts";
import { diagram } from "./ink.ts";
import { penFor } from "./pen.ts";

/** What keeps the door shut: the tab from behind the base frame, the button on the door, the loop of string. Undefined without a window. */
export function closing(kit: Kit, { window }: Pattern): Figure | undefined {
  if (!window) return undefined;
  const place = closingPlace(window);
  const string = formatByHand(window.stringLength, kit.units);
  const scale = Math.min(1.7, 30 / (place.edge + place.end));
  const pen = penFor(place.out === 1 ? "ltr" : "rtl");
  return diagram(72, say.drawClosing({ string }), [
    closingFace(pen, window.door, place, scale),
    pen.words([3, 4], say.drawFromFront(), { bold: true }),
    pen.turn([39, 3], 2),
    pen.words([42.2, 4], say.drawClosingString({ string })),
    closingSection(pen, place, scale),
    pen.words([3, 51.5], say.drawFromHead(), { bold: true }),
  ]);
}
