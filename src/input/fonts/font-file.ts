import { create, type Font } from "fontkit";

/** What a font file is by its first bytes. */
export type FontKind = "woff2" | "woff" | "ttf" | "otf";

/** A font as far as texts ask of it. */
export interface FontFile {
  readonly kind: FontKind;
  readonly family: string;
  /** From light to bold, 100 to 900; both the same where the file has one weight. */
  readonly weights: readonly [least: number, most: number];
  readonly covers: (codePoint: number) => boolean;
  /** How far a letter advances, as a share of the letters' height; undefined where the font has it not. */
  readonly advance: (codePoint: number) => number | undefined;
}

/** First bytes by the formats' specifications (WOFF 1.0, WOFF 2.0, OpenType 1.9). */
const KINDS: readonly (readonly [string, FontKind])[] = [
  ["wOF2", "woff2"],
  ["wOFF", "woff"],
  ["\0\x01\0\0", "ttf"],
  ["true", "ttf"],
  ["OTTO", "otf"],
];

/** What a font file is; undefined for what is no font of one face. */
export function fontKindOf(bytes: Uint8Array): FontKind | undefined {
  const begin = Buffer.from(bytes.subarray(0, 4)).toString("latin1");
  return KINDS.find(([first]) => first === begin)?.[1];
}

/** Reads a font with its own tables of characters and widths. Undefined for what is no font of one face. */
export function openFont(bytes: Uint8Array): FontFile | undefined {
  const kind = fontKindOf(bytes);
  if (!kind) return undefined;
  try {
    return fontOf(kind, create(Buffer.from(bytes)) as Font);
  } catch {
    // The reader throws errors of many kinds at a broken file.
    return undefined;
  }
}

function fontOf(kind: FontKind, font: Font): FontFile {
  const covered = new Set(font.characterSet);
  const known = new Map<number, number>();
  const { wght } = font.variationAxes as Readonly<Record<string, { readonly min: number; readonly max: number }>>;
  const usual = font["OS/2"]?.usWeightClass ?? 400;
  return {
    kind,
    family: font.familyName,
    weights: wght ? [wght.min, wght.max] : [usual, usual],
    covers: (codePoint) => covered.has(codePoint),
    advance: (codePoint) => {
      if (!covered.has(codePoint)) return undefined;
      const found = known.get(codePoint) ?? font.glyphForCodePoint(codePoint).advanceWidth / font.unitsPerEm;
      known.set(codePoint, found);
      return found;
    },
  };
}
