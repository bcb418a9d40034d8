import { extname, resolve, sep } from "node:path";
import * as say from "../../words/messages.ts";
import { contentKind } from "./content-kind.ts";
import { FileError, isInside } from "./file-error.ts";
import { fileAdvice, toldOfFile } from "./file-message.ts";
import { pathBelow } from "./folders.ts";
import type { NamedPhoto } from "./named-photo.ts";
import { isRasterName, PHOTO_ENDINGS, PHOTO_KINDS } from "./photo-kinds.ts";
import { type FieldPath, type Problem, problem } from "./problem.ts";
import { entriesIn, readBeginning, readBytes, readText } from "./read-file.ts";
import { nameList } from "./short.ts";
import type { SiteFile } from "./site-file.ts";

/** The folder of a kit and its project. */
export interface KitFolder {
  readonly base: string;
  readonly folder: string;
}

/**
 * A picture of a kit that the field `at` names: its file below the project, and its text.
 * @throws ProblemError where none is in the kit's folder; KitError where that holds no text
 */
export function pictureText(
  kit: KitFolder,
  name: string,
  at: FieldPath,
): { readonly file: string; readonly text: string } {
  const source = fileOfKit(kit, name, { at, kind: "picture" });
  if (extname(name).toLowerCase() !== ".svg")
    throw problem(at, { given: say.frontNoSvg({ file: name }), allowed: say.frontAnSvg(), remedy: say.frontDrawSvg() });
  const text = toldOfFile(() => atField(kit, { at, name, endings: [".svg"] }, () => readText(source)));
  return { file: source.file, text };
}

/**
 * The bytes of a picture of a kit that is a photograph or a scan, which the field `at` names; what they are is looked at where they are decoded.
 * @throws ProblemError where none can be read in the kit's folder
 */
export function pictureBytes(
  kit: KitFolder,
  name: string,
  at: FieldPath,
): { readonly file: string; readonly bytes: Buffer } {
  const source = { ...fileOfKit(kit, name, { at, kind: "picture" }), kind: "raster" as const };
  return { file: source.file, bytes: atField(kit, { at, name, endings: PHOTO_ENDINGS }, () => readBytes(source)) };
}

/** Every photo begins as one, in the kit's folder. @throws ProblemError */
export function checkPhotos(kit: KitFolder, photos: readonly NamedPhoto[]): void {
  for (const { file, at } of photos) {
    const source = photoOfKit(kit, file, at);
    atField(kit, { at, name: file, endings: PHOTO_ENDINGS }, () => checkPhotoKind(source, readBeginning(source)));
    if (isRasterName(file)) continue;
    const given = say.frontNoPhoto({ file });
    throw problem(at, { given, allowed: PHOTO_ENDINGS.join(", "), remedy: say.frontSavePhoto() });
  }
}

/** Where a photo of a kit is. @throws ProblemError where its name leads out of the kit's folder */
export function photoOfKit(kit: KitFolder, name: string, at: Problem["at"]): SiteFile {
  return fileOfKit(kit, name, { at, kind: "photo" });
}

/** A photo is one by its bytes, whatever its name. @throws FileError */
export function checkPhotoKind(source: SiteFile, bytes: Buffer): void {
  const is = bytes.length === 0 ? undefined : (contentKind(bytes) ?? "unknown");
  if (is === undefined) throw new FileError(source, { kind: "empty" });
  if (!PHOTO_KINDS.includes(is)) throw new FileError(source, { kind: "other-content", is });
}

/** How names of font files end. */
export const FONT_ENDINGS: readonly string[] = [".ttf", ".otf", ".woff", ".woff2"];

/** The bytes of a font of a kit that the field `at` names. @throws ProblemError where it cannot be read */
export function fontOfKit(kit: KitFolder, name: string, at: FieldPath): Buffer {
  const source = fileOfKit(kit, name, { at, kind: "font" });
  return atField(kit, { at, name, endings: FONT_ENDINGS }, () => readBytes(source));
}

function fileOfKit(
  { base, folder }: KitFolder,
  name: string,
  { at, kind }: { readonly at: Problem["at"]; readonly kind: "picture" | "photo" | "font" },
): SiteFile {
  const path = resolve(folder, name);
  const home = pathBelow(base, folder);
  if (path.startsWith(resolve(folder) + sep)) return { base, file: pathBelow(base, path), home, kind };
  const copy = { allowed: say.frontFileInside(), remedy: say.frontCopyFile({ kind }) };
  throw problem(at, { given: say.frontFileOutside({ file: name }), ...copy });
}

/** A file that a field names. */
interface Named {
  readonly at: Problem["at"];
  readonly name: string;
  readonly endings: readonly string[];
}

/** Reads a file that a field names; where none can be read, the field is told of. @throws ProblemError, FileError about a picture’s text */
function atField<T>(kit: KitFolder, { at, name, endings }: Named, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof FileError) || (isInside(error.fault) && error.source.kind === "picture")) throw error;
    if (error.fault.kind === "missing") throw problem(at, missing(kit, name, endings));
    const { given, ...advice } = fileAdvice(error);
    throw problem(at, { given: say.frontFileIs({ file: name, what: given }), ...advice });
  }
}

function missing({ base, folder }: KitFolder, name: string, endings: readonly string[]) {
  const entries = toldOfFile(() => entriesIn(base, pathBelow(base, folder))).map((entry) => entry.name);
  const files = entries.filter((entry) => endings.includes(extname(entry).toLowerCase()));
  return {
    given: say.frontFileMissing({ file: name }),
    allowed: files.length > 0 ? say.frontFileAmong({ files: nameList(files) }) : say.frontFileInside(),
    remedy: say.frontAddFile(),
  };
}
