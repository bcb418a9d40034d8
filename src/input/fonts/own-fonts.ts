import { existsSync, lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { NamedFont } from "../../core/site-settings.ts";
import * as say from "../../words/messages.ts";
import { type Advice, problem } from "../files/problem.ts";
import { type FontFile, openFont } from "./font-file.ts";

/** Where fonts stand that a site's settings name. */
export const FONTS_FOLDER = "content/fonts";

/** Larger than any font of a script, in MB. */
const LARGEST = 32;

/** A font that the site's settings name. */
export interface OwnFont {
  /** Files of one name are weights of one font. */
  readonly name: string;
  /** Below the project. */
  readonly file: string;
  /** Its name among the built site's fonts. */
  readonly target: string;
  readonly font: FontFile;
}

const opened = new WeakMap<readonly NamedFont[], readonly OwnFont[]>();

/** Opens the fonts that settings of the project `base` name, once for each reading of them. @throws ProblemError with the place in the settings */
export function ownFonts(base: string, named: readonly NamedFont[]): readonly OwnFont[] {
  const known = opened.get(named);
  if (known) return known;
  const fonts = named.map(({ file, name }, i): OwnFont => {
    const path = `${FONTS_FOLDER}/${file}`;
    const wrong = (given: string): Error => problem(["fonts", i, "file"], adviceOf(base, given));
    const found = join(base, path);
    const facts = existsSync(found) ? lstatSync(found) : undefined;
    if (!facts) throw wrong(say.fontMissing({ file: path }));
    if (!facts.isFile() || facts.size > LARGEST * 1_000_000) throw wrong(say.fontNoFile({ file: path }));
    const font = openFont(readFileSync(found));
    if (!font) throw wrong(say.fontNoFont({ file: path }));
    return { name: name ?? font.family, file: path, target: `own-${i + 1}.${font.kind}`, font };
  });
  opened.set(named, fonts);
  return fonts;
}

function adviceOf(base: string, given: string): Advice {
  const folder = join(base, FONTS_FOLDER);
  const files = existsSync(folder) ? readdirSync(folder).filter((name) => /\.(woff2?|[ot]tf)$/i.test(name)) : [];
  return {
    given,
    allowed:
      files.length > 0 ? say.fontFiles({ files: files.join(", "), most: LARGEST }) : say.fontFolder({ most: LARGEST }),
    remedy: say.fontDoAdd(),
  };
}
