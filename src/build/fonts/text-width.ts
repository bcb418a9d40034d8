import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { fontOf } from "./coverage.ts";
import { type Face, type Family, facesFor, isAsked } from "./faces.ts";

/** How packets set a text. */
export interface Setting {
  readonly family: Family;
  /** One of the family's cuts in packets. */
  readonly weight: string;
  /** Height of the letters, in any unit; widths are in the same. */
  readonly size: number;
}

/** What no font has is drawn as a box, about as wide as it is high. */
const BOX = 1;

/**
 * How wide packets set a text on one line, by the widths in the fonts' own tables. Kerning makes it a little narrower, marks
 * stand over their letter.
 */
export function textWidth(text: string, { family, weight, size }: Setting, own: readonly OwnFont[]): number {
  const faces = facesOf(family, weight);
  let width = 0;
  for (const letter of text.normalize("NFC")) width += advanceOf(letter, faces, own);
  return width * size;
}

const known = new Map<string, readonly Face[]>();

/** In the order in which a browser asks them. */
function facesOf(family: Family, weight: string): readonly Face[] {
  const key = `${family} ${weight}`;
  const found =
    known.get(key) ??
    facesFor("print")
      .filter((face) => face.family === family && face.weight === weight)
      .toReversed();
  known.set(key, found);
  return found;
}

function advanceOf(letter: string, faces: readonly Face[], own: readonly OwnFont[]): number {
  if (/\p{Default_Ignorable_Code_Point}/u.test(letter)) return 0;
  const code = letter.codePointAt(0)!;
  for (const face of faces) {
    const advance = isAsked(face, code) ? fontOf(face).advance(code) : undefined;
    if (advance !== undefined) return advance;
  }
  for (const { font } of own) {
    const advance = font.advance(code);
    if (advance !== undefined) return advance;
  }
  return BOX;
}
