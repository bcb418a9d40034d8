import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

const MODULES = "node_modules/";

/** The scopes whose packages hold fonts. */
const FONTS = ["@fontsource", "@fontsource-variable"];

/** Folders of the packages that the files of a bundle come from, each once. */
export function packagesOf(files: readonly string[]): string[] {
  const folders = files.flatMap((file) => {
    const at = file.replaceAll("\\", "/").lastIndexOf(MODULES) + MODULES.length;
    if (at < MODULES.length) return [];
    const [first, second] = file.slice(at).split(/[\\/]/);
    return [resolve(file.slice(0, at), first!.startsWith("@") ? `${first}/${second}` : first!)];
  });
  return [...new Set(folders)];
}

/** Folders of the packages that the fonts in a folder were copied from; a maker's own, below `own`, are in none. @throws BuildError where a font is in neither */
export function packagesOfFonts(base: string, fonts: string, own: string): string[] {
  if (!existsSync(fonts)) return [];
  const packages = fontPackages(base);
  const found = filesIn(fonts).flatMap((file) => {
    const name = nameOf(file);
    const folder = packages.get(name);
    if (folder === undefined && !filesIn(own).some((one) => nameOf(one) === name))
      throw new BuildError(say.licencesNoFont({ file: basename(file) }));
    return folder ?? [];
  });
  return [...new Set(found)];
}

/** The font packages' folders by the contents of their files. */
function fontPackages(base: string): ReadonlyMap<string, string> {
  const folders = FONTS.map((scope) => join(base, MODULES, scope))
    .filter((scope) => existsSync(scope))
    .flatMap((scope) => readdirSync(scope).map((name) => join(scope, name)))
    .filter((folder) => existsSync(join(folder, "files")));
  return new Map(folders.flatMap((folder) => filesIn(join(folder, "files")).map((file) => [nameOf(file), folder])));
}

function filesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(woff2?|ttf|otf)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

function nameOf(file: string): string {
  return createHash("sha256").update(readFileSync(file)).digest("hex");
}
