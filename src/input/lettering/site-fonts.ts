import { toldOfFile } from "../files/file-message.ts";
import { readBytes } from "../files/read-file.ts";
import { fontsFolder, type OwnFont } from "../fonts/own-fonts.ts";
import { openTypeface, type Typeface } from "./typeface.ts";

/** The fonts that the settings of the site in the project `base` name. */
export interface SiteFonts {
  readonly base: string;
  readonly fonts: readonly OwnFont[];
}

const opened = new WeakMap<OwnFont, Map<number, Typeface | undefined>>();

/** The fonts of the site of that name, however its letters are written: of several weights the nearest one first. @throws KitError where a file is there no more */
export function siteFonts(name: string, weight: number, { base, fonts }: SiteFonts): Typeface[] {
  const folded = name.trim().toLowerCase();
  return fonts
    .filter((font) => font.name.toLowerCase() === folded)
    .toSorted((a, b) => distance(a, weight) - distance(b, weight))
    .flatMap((font) => typefaceOf(font, weight, base) ?? []);
}

/** How far a weight is from those that a font has. */
function distance({ font }: OwnFont, weight: number): number {
  const [least, most] = font.weights;
  return Math.max(0, least - weight, weight - most);
}

function typefaceOf(own: OwnFont, weight: number, base: string): Typeface | undefined {
  const known = opened.get(own) ?? new Map<number, Typeface | undefined>();
  opened.set(own, known);
  if (!known.has(weight)) {
    const source = { base, file: own.file, kind: "font", home: fontsFolder() } as const;
    const bytes = toldOfFile(() => readBytes(source));
    known.set(weight, openTypeface(bytes, weight));
  }
  return known.get(weight);
}
