import { curveOf, fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import * as say from "../../../words/messages.ts";
import { escapeXml } from "../../xml.ts";
import { num } from "../svg-text.ts";
import { boards } from "./boards.ts";
import { glow, lightBody } from "./glow.ts";
import { openBook } from "./open-book.ts";
import type { Mood } from "./tone.ts";
import { closedWindow } from "./window.ts";

/** What is drawn: by day the open book with its relief; lit, the finished piece with its window closed, in a dark room. */
export interface FrontOptions {
  readonly slug: string;
  readonly title: string;
  readonly mood: Mood;
}

/**
 * The finished book seen from the front at the fit's opening, drawn from the computed leaves: each folded tip, the faces
 * behind it that a deeper neighbour leaves open, notches, the boards; lit also the light, its glow, window and motifs.
 * Units of the drawing are mm; x as in the fan, y from the head.
 */
export function frontPicture(pattern: Pattern, options: FrontOptions): string {
  const { slug, title, mood } = options;
  const fan = fanOf(pattern);
  const { book, fit } = pattern;
  const reach = fit.boardWidth / 2 + 3;
  const margin = book.square + 4;
  const height = book.leafHeight + 2 * margin;
  const inside = mood === "lit" && pattern.pocket ? glow(pattern, pattern.pocket, fan) + lightBody(pattern.pocket) : "";
  const window = mood === "lit" && pattern.window ? closedWindow(pattern.window, curveOf(pattern), mood) : "";
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${num(2 * reach)}mm" height="${num(height)}mm" viewBox="${num(-reach)} ${num(-margin)} ${num(2 * reach)} ${num(height)}" role="img">`,
    `<title>${escapeXml(titleOf(pattern, title, mood))}</title>`,
    DEFINITIONS,
    boards(pattern, fan, slug, mood),
    openBook(pattern, fan, mood),
    inside,
    window,
    "</svg>\n",
  ].join("");
}

function titleOf({ levels, leaves }: Pattern, title: string, mood: Mood): string {
  return say.drawFront({ title, mood, levels: levels.length, leaves: leaves.length });
}

const DEFINITIONS =
  '<defs><linearGradient id="drop" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#3a2410" stop-opacity=".5"/><stop offset="1" stop-color="#3a2410" stop-opacity="0"/></linearGradient></defs>';
