import { curveOf, fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { bookPicture, type FrontOptions } from "./book-picture.ts";
import { glow, lightBody } from "./glow.ts";
import { closedWindow } from "./window.ts";

/** The finished book seen from the front; lit also the light, its glow, window and motifs. */
export function frontPicture(pattern: Pattern, options: FrontOptions): string {
  const { pocket, window } = pattern;
  if (options.mood === "day") return bookPicture(pattern, options);
  const inside = pocket ? glow(pattern, pocket, fanOf(pattern)) + lightBody(pocket) : "";
  const closed = window ? closedWindow(window, curveOf(pattern), options.mood) : "";
  return bookPicture(pattern, options, inside + closed);
}
