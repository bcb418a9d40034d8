import { readFileSync } from "node:fs";
import { type FontFile, openFont } from "../../input/fonts/font-file.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { type Face, facesFor, isAsked } from "./faces.ts";

const known = new Map<string, FontFile>();

/** The font in a face's file; each is opened once, and only when it is asked for. */
export function fontOf({ source }: Face): FontFile {
  const found = known.get(source) ?? openFont(readFileSync(source));
  if (!found) throw new Error(`${source} is no font`);
  known.set(source, found);
  return found;
}

/**
 * Whether packets have a letter for a character: in their text face, which also stands in for headings, or in a font that the
 * settings name.
 */
export function coverage(own: readonly OwnFont[]): (codePoint: number) => boolean {
  const faces = facesFor("print").filter(({ family, weight }) => family === "Source Sans 3" && weight === "400");
  const answers = new Map<number, boolean>();
  return (codePoint) => {
    const answered = answers.get(codePoint);
    if (answered !== undefined) return answered;
    const has =
      faces.some((face) => isAsked(face, codePoint) && fontOf(face).covers(codePoint)) ||
      own.some(({ font }) => font.covers(codePoint));
    answers.set(codePoint, has);
    return has;
  };
}
