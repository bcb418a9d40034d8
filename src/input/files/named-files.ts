import { existsSync, readdirSync, realpathSync, statSync } from "node:fs";
import { extname, resolve, sep } from "node:path";
import * as say from "../../words/messages.ts";
import { type Problem, problem } from "./problem.ts";

/** What photos may be. */
export const PHOTO_KINDS: readonly string[] = [".jpg", ".jpeg", ".png", ".webp", ".avif"];

/** The path of a kit's picture. @throws ProblemError where it is no SVG in the kit's folder */
export function pictureFile(folder: string, name: string): string {
  const at = ["picture", "file"];
  const path = fileInside(folder, name, { at, kind: "picture", endings: [".svg"] });
  if (extname(path).toLowerCase() === ".svg") return path;
  const given = say.frontNoSvg({ file: name });
  throw problem(at, { given, allowed: say.frontAnSvg(), remedy: say.frontDrawSvg() });
}

/** A photo that a kit or a text names, and where. */
export interface NamedPhoto {
  readonly file: string;
  readonly at: Problem["at"];
}

/** Every photo is one, in its folder. @throws ProblemError */
export function checkPhotos(folder: string, photos: readonly NamedPhoto[]): void {
  for (const { file, at } of photos) {
    const path = fileInside(folder, file, { at, kind: "photo", endings: PHOTO_KINDS });
    if (PHOTO_KINDS.includes(extname(path).toLowerCase())) continue;
    const given = say.frontNoPhoto({ file });
    throw problem(at, { given, allowed: PHOTO_KINDS.join(", "), remedy: say.frontSavePhoto() });
  }
}

/** A file that a kit names, and what such a file is. */
interface Wanted {
  readonly at: Problem["at"];
  readonly kind: "picture" | "photo";
  readonly endings: readonly string[];
}

/** A file that the kit names: there, and inside its folder also behind links. @throws ProblemError */
function fileInside(folder: string, file: string, { at, kind, endings }: Wanted): string {
  const path = resolve(folder, file);
  const allowed = say.frontFileInside();
  const copy = { allowed, remedy: say.frontCopyFile({ kind }) };
  if (!path.startsWith(resolve(folder) + sep)) throw problem(at, { given: say.frontFileOutside({ file }), ...copy });
  if (!existsSync(path)) {
    const files = readdirSync(folder).filter((entry) => endings.includes(extname(entry).toLowerCase()));
    throw problem(at, {
      given: say.frontFileMissing({ file }),
      allowed: files.length > 0 ? say.frontFileAmong({ files: files.join(", ") }) : allowed,
      remedy: say.frontAddFile(),
    });
  }
  if (!statSync(path).isFile())
    throw problem(at, { given: say.frontFileFolder({ file }), allowed, remedy: say.frontNameFile() });
  if (!realpathSync(path).startsWith(realpathSync(folder) + sep))
    throw problem(at, { given: say.frontFileLink({ file }), ...copy });
  return path;
}
