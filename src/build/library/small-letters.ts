import type { Kit } from "../../core/kit/kit.ts";
import { placeText } from "../../input/files/message.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { gaugeWords } from "../../output/drawing/sheets/gauge-sheet.ts";
import { formatLength } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { textWidth } from "../fonts/text-width.ts";

/** Smaller letters are hard to read on paper, mm (the least that drawings have elsewhere). */
const LEAST = 2.1;

/** Names of levels that are so wide that the gauge has room only for letters that are hard to read, in sentences with their places. */
export function smallLetters(kit: Kit, texts: readonly AuthoredText[], fonts: readonly OwnFont[]): string[] {
  const sizes = new Map<number, number>();
  for (const { levels, words, room, size } of gaugeWords(kit)) {
    const width = textWidth(words, { family: "Source Sans 3", weight: "600", size: 1 }, fonts);
    for (const level of levels) sizes.set(level, Math.min(sizes.get(level) ?? size, room / width));
  }
  return [...sizes].flatMap(([level, size]) => {
    if (size >= LEAST) return [];
    const field = `levels[${level}].name`;
    const place = texts.find((text) => text.file === `content/kits/${kit.slug}/index.md` && text.field === field);
    if (!place) return [];
    const height = formatLength(size, { units: "mm", step: 0.1 });
    return [say.fontSmall({ place: placeText(place), field, height })];
  });
}
