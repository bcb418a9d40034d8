import type { NamedFont } from "../../core/site-settings.ts";
import * as say from "../../words/messages.ts";
import { contentPath } from "../files/content-folder.ts";
import { FileError } from "../files/file-error.ts";
import { fileAdvice, toldOfFile } from "../files/file-message.ts";
import { type Advice, problem } from "../files/problem.ts";
import { entriesIn, readBytes } from "../files/read-file.ts";
import { nameList } from "../files/short.ts";
import { FILE_LIMITS } from "../files/site-file.ts";
import { type FontFile, openFont } from "./font-file.ts";

/** Where fonts stand that a site's settings name. */
export const fontsFolder = (): string => contentPath("fonts");

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
    const path = contentPath(`fonts/${file}`);
    const wrong = (given: string): Error => problem(["fonts", i, "file"], adviceOf(base, given));
    const font = openFont(bytesOf(base, path, wrong));
    if (!font) throw wrong(say.fontNoFont({ file: path }));
    return { name: name ?? font.family, file: path, target: `own-${i + 1}.${font.kind}`, font };
  });
  opened.set(named, fonts);
  return fonts;
}

function bytesOf(base: string, file: string, wrong: (given: string) => Error): Buffer {
  try {
    return readBytes({ base, file, kind: "font", home: fontsFolder() });
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    if (error.fault.kind === "missing") throw wrong(say.fontMissing({ file }));
    throw wrong(say.frontFileIs({ file, what: fileAdvice(error).given }));
  }
}

function adviceOf(base: string, given: string): Advice {
  const entries = toldOfFile(() => entriesIn(base, fontsFolder())).map(({ name }) => name);
  const files = entries.filter((name) => /\.(woff2?|[ot]tf)$/i.test(name));
  return {
    given,
    allowed:
      files.length > 0
        ? say.fontFiles({ files: nameList(files), most: FILE_LIMITS.font })
        : say.fontFolder({ most: FILE_LIMITS.font }),
    remedy: say.fontDoAdd(),
  };
}
