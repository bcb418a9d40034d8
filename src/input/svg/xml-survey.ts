import * as say from "../../words/messages.ts";
import { MOST_DOCTYPE, MOST_ELEMENTS, MOST_LEVELS, MOST_PREFIXES } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";

/** What markup other than tags begins and ends with. */
const SKIPPED = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
] as const;

/**
 * Goes once through the markup of a file before the XML reader does, which in some files takes time by the square of what it
 * finds. Markup that does not end is left to the reader.
 * @throws PictureLimit where there is too much of something
 */
export function surveyXml(text: string): void {
  surveyPrefixes(text);
  let depth = 0;
  let elements = 0;
  let end: number | undefined;
  for (let at = text.indexOf("<"); at >= 0; at = text.indexOf("<", end)) {
    end = endOfMarkup(text, at);
    if (end === undefined) return;
    const second = text[at + 1]!;
    if (second === "!" || second === "?") continue;
    if (second === "/") {
      depth -= 1;
      continue;
    }
    elements += 1;
    if (text[end - 2] !== "/") depth += 1;
    if (depth > MOST_LEVELS) throw faultAt(text, at, say.pictureManyLevels({ most: MOST_LEVELS }));
    if (elements > MOST_ELEMENTS) throw faultAt(text, at, say.pictureManyElements({ most: MOST_ELEMENTS }));
  }
}

/** Where the markup that begins at `at` is over; undefined where it does not end. @throws PictureLimit */
function endOfMarkup(text: string, at: number): number | undefined {
  for (const [begin, end] of SKIPPED) {
    if (!text.startsWith(begin, at)) continue;
    const found = text.indexOf(end, at + begin.length);
    return found < 0 ? undefined : found + end.length;
  }
  const end = endOfTag(text, at);
  if (text.startsWith("<!", at) && (end ?? text.length) - at > MOST_DOCTYPE)
    throw faultAt(text, at, say.pictureDoctype({ most: MOST_DOCTYPE }));
  return end;
}

/** Behind the `>` that is neither in quotes nor, in a document type, in brackets. */
function endOfTag(text: string, at: number): number | undefined {
  let brackets = 0;
  for (let i = at + 1; i < text.length; i += 1) {
    const sign = text[i]!;
    if (sign === '"' || sign === "'") {
      i = text.indexOf(sign, i + 1);
      if (i < 0) return undefined;
    } else if (sign === "[") brackets += 1;
    else if (sign === "]") brackets -= 1;
    else if (sign === ">" && brackets <= 0) return i + 1;
  }
  return undefined;
}

function surveyPrefixes(text: string): void {
  const prefixes = new Set<string>();
  for (const { 1: prefix, index } of text.matchAll(/\sxmlns:([^\s=]{1,100})/g)) {
    prefixes.add(prefix!);
    if (prefixes.size > MOST_PREFIXES) throw faultAt(text, index, say.picturePrefixes({ most: MOST_PREFIXES }));
  }
}

function faultAt(text: string, at: number, message: string): PictureLimit {
  return new PictureLimit(text.slice(0, at).split("\n").length, message);
}
