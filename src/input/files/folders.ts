import { existsSync, readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import * as say from "../../words/messages.ts";
import { KitError } from "./message.ts";

/** What a folder of `content` is made for. */
export type FolderKind = "kit" | "class";

/** The folders under `root`; without `root` there is none. */
export function foldersIn(root: string): string[] {
  const entries = existsSync(root) ? readdirSync(root, { withFileTypes: true }) : [];
  return entries.filter((entry) => entry.isDirectory()).map((entry) => join(root, entry.name));
}

/** A folder's name, which becomes an address, and its index.md as the author knows it. @throws KitError */
export function openFolder(
  folder: string,
  base: string,
  kind: FolderKind,
): { readonly slug: string; readonly file: string } {
  const slug = slugOf(folder);
  const file = pathBelow(base, join(folder, "index.md"));
  const whole = { file, line: undefined, column: undefined, field: say.checkFieldFolder({ kind }) };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(slug)) {
    const given = say.checkFolderName({ name: slug });
    throw new KitError([{ ...whole, given, allowed: say.checkFolderNames(), remedy: say.checkRenameFolder() }]);
  }
  if (!existsSync(join(folder, "index.md"))) {
    const advice = { allowed: say.checkFolderHolds({ kind }), remedy: say.checkAddIndex() };
    throw new KitError([{ ...whole, given: say.checkNoIndex(), ...advice }]);
  }
  return { slug, file };
}

/** A folder's own name. */
export function slugOf(folder: string): string {
  return folder.split(sep).at(-1)!;
}

/** A file as messages name it: below the project `base`, with slashes. */
export function pathBelow(base: string, path: string): string {
  return relative(base, path).split(sep).join("/");
}
