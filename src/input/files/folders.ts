import { statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import * as say from "../../words/messages.ts";
import { checkAddressName } from "./address-name.ts";
import { toldOfFile } from "./file-message.ts";
import { KitError } from "./message.ts";
import { entriesIn } from "./read-file.ts";
import { isThere, realPath } from "./real-path.ts";

/** What a folder of `content` is made for. */
export type FolderKind = "kit" | "class";

/** The folders under `root` in the project `base`, also behind links; without `root` there is none. @throws KitError where it cannot be listed */
export function foldersIn(root: string, base: string): string[] {
  const entries = toldOfFile(() => entriesIn(base, pathBelow(base, root)));
  const leadsToFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
  return entries
    .filter((entry) => entry.isDirectory() || (entry.isSymbolicLink() && leadsToFolder(join(root, entry.name))))
    .map((entry) => join(root, entry.name));
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
  toldOfFile(() => realPath({ base, file: pathBelow(base, folder), kind: undefined }));
  checkAddressName("folder", slug, { file, field: whole.field, remedy: say.checkRenameFolder() });
  if (!isThere(base, file)) {
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
