import { readFileSync, statSync } from "node:fs";
import { extname, resolve } from "node:path";
import { outlineNumbers, type PictureAnswer } from "../../core/beginning/answers.ts";
import { FONT_ENDINGS } from "../../input/files/named-files.ts";
import { shortValue } from "../../input/files/short.ts";
import { FILE_LIMITS, MB } from "../../input/files/site-file.ts";
import { PROJECT_FAMILIES, projectFamily } from "../../input/lettering/project-fonts.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { broughtSketch } from "./brought-sketch.ts";
import { iconDrawing } from "./icons.ts";
import type { Sketch } from "./sketch.ts";

/** Sides of an outline's box, mm; the kit's height on the book goes for the picture. */
const OUTLINE_SIDE = 100;

/** The picture that was asked for. `base` is the project's folder. @throws BuildError for a file or an icon that is not there or is no picture */
export function sketchOf(answer: PictureAnswer, base: string): Sketch {
  const level = say.newLevelPicture();
  const plain = { levels: [level], grounded: false, files: [], credit: undefined };
  if (answer.from === "word") {
    const { fields, files } = answer.family ? inFamily(answer.family) : fontSketch(answer.font, base);
    return { ...plain, picture: { text: linesOf(answer.text), level, ...fields }, files };
  }
  if (answer.from === "outline")
    return {
      ...plain,
      picture: { [answer.name]: outlineNumbers(answer.name), level, width: OUTLINE_SIDE, height: OUTLINE_SIDE },
    };
  if (answer.from === "file") return fileSketch(answer.path, base);
  if (answer.from === "bytes") return broughtSketch({ ...answer, bytes: asBuffer(answer.bytes) });
  const file = "picture.svg";
  return {
    ...plain,
    picture: { file, level },
    files: [{ name: file, bytes: iconDrawing(answer.name) }],
    credit: { work: say.newTextIcon({ icon: answer.name }), licence: "MIT", source: "phosphoricons.com" },
  };
}

/** What a font is of that is there already, and of one that comes along. */
type FontSketch = Pick<Sketch, "files"> & { readonly fields: object };

function inFamily(font: string): FontSketch {
  return { fields: { font }, files: [] };
}

/** A font of the project by its name, any other as a file that comes along. @throws BuildError */
function fontSketch(font: string | undefined, base: string): FontSketch {
  if (font === undefined) return { fields: {}, files: [] };
  const family = projectFamily(font);
  if (family !== undefined) return inFamily(family);
  const ending = extname(font).toLowerCase();
  const path = resolve(base, font);
  if (!FONT_ENDINGS.includes(ending) || !statSync(path, { throwIfNoEntry: false })?.isFile())
    throw new BuildError(say.newNoFont({ font: shortValue(font), fonts: rowText([...PROJECT_FAMILIES]) }));
  if (statSync(path).size > FILE_LIMITS.font * MB)
    throw new BuildError(say.newFontLarge({ font: shortValue(font), most: FILE_LIMITS.font }));
  const name = `font${ending}`;
  return { fields: { font: name }, files: [{ name, bytes: readFileSync(path) }] };
}

function linesOf(text: string): string | string[] {
  const lines = text.split(/\\n|\n/).map((line) => line.trim());
  return lines.length > 1 ? lines : lines[0]!;
}

/** A file as it lies on the disk, with nothing wished. @throws BuildError, KitError */
function fileSketch(path: string, base: string): Sketch {
  return broughtSketch({ name: path, bytes: fileAt(resolve(base, path), path), wish: {} });
}

/** @throws BuildError */
function fileAt(path: string, given: string): Buffer {
  const found = statSync(path, { throwIfNoEntry: false });
  const file = shortValue(given);
  if (!found?.isFile()) throw new BuildError(say.newNoFile({ file }));
  const most = extname(path).toLowerCase() === ".svg" ? FILE_LIMITS.picture : FILE_LIMITS.photo;
  if (found.size > most * MB) throw new BuildError(say.newFileLarge({ file, most }));
  return readFileSync(path);
}

function asBuffer({ buffer, byteOffset, byteLength }: Uint8Array): Buffer {
  return Buffer.from(buffer, byteOffset, byteLength);
}
