import { fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern, PatternBase } from "../../../core/pattern/pattern.ts";
import * as say from "../../../words/messages.ts";
import { escapeXml } from "../../xml.ts";
import { num } from "../svg-text.ts";
import { boards } from "./boards.ts";
import { openBook } from "./open-book.ts";
import type { Mood } from "./tone.ts";

/** What is drawn: by day the open book with its relief; lit, the finished piece with its window closed, in a dark room. */
export interface FrontOptions {
  readonly slug: string;
  readonly title: string;
  readonly mood: Mood;
}

/**
 * The finished book seen from the front at the fit's opening, drawn from the computed leaves: each folded tip, the faces
 * behind it that a deeper neighbour leaves open, notches, the boards; `over` all that is what else there is. Units of the
 * drawing are mm; x as in the fan, y from the head.
 */
export function bookPicture(pattern: Pattern, options: FrontOptions, over = ""): string {
  const { title, mood } = options;
  const { levels, leaves } = pattern;
  const words = say.drawFront({ title, mood, levels: levels.length, leaves: leaves.length });
  return openedBook(pattern, words, options, openBook(pattern, fanOf(pattern), mood) + over);
}

/** The opened book with what is drawn before its boards; `words` is what it shows. */
export function openedBook(pattern: PatternBase, words: string, { slug, mood }: FrontOptions, drawn: string): string {
  const { book, fit } = pattern;
  const reach = fit.boardWidth / 2 + 3;
  const margin = book.square + 4;
  const height = book.leafHeight + 2 * margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${num(2 * reach)}mm" height="${num(height)}mm" viewBox="${num(-reach)} ${num(-margin)} ${num(2 * reach)} ${num(height)}" role="img">`,
    `<title>${escapeXml(words)}</title>`,
    DEFINITIONS,
    boards(pattern, fanOf(pattern), slug, mood),
    drawn,
    "</svg>\n",
  ].join("");
}

const DEFINITIONS =
  '<defs><linearGradient id="drop" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#3a2410" stop-opacity=".5"/><stop offset="1" stop-color="#3a2410" stop-opacity="0"/></linearGradient></defs>';
