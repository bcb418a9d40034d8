import { existsSync, readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { KitError, type KitMessage } from "./message.ts";

/**
 * Reads each folder under `root` with `read`; without `root` there is none.
 * @throws KitError with the messages of all folders that cannot be read.
 */
export function readFolders<T>(root: string, read: (folder: string) => T): T[] {
  const made: T[] = [];
  const messages: KitMessage[] = [];
  for (const entry of existsSync(root) ? readdirSync(root, { withFileTypes: true }) : []) {
    if (!entry.isDirectory()) continue;
    try {
      made.push(read(join(root, entry.name)));
    } catch (error) {
      if (!(error instanceof KitError)) throw error;
      messages.push(...error.messages);
    }
  }
  if (messages.length > 0) throw new KitError(messages);
  return made;
}

/** A folder's name, which becomes an address, and its index.md as the author knows it. `holds` is what such a folder holds. @throws KitError */
export function openFolder(
  folder: string,
  base: string,
  kind: "kit" | "class",
  holds: string,
): { readonly slug: string; readonly file: string } {
  const slug = folder.split(sep).at(-1)!;
  const file = relative(base, join(folder, "index.md")).split(sep).join("/");
  const whole = { file, line: undefined, column: undefined, field: `${kind} folder` };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(slug)) {
    const allowed = "small letters, digits and single hyphens";
    throw new KitError([{ ...whole, given: `folder "${slug}"`, allowed, remedy: "rename the folder" }]);
  }
  if (!existsSync(join(folder, "index.md"))) {
    const remedy = "add index.md or remove the folder";
    throw new KitError([{ ...whole, given: "no index.md in the folder", allowed: holds, remedy }]);
  }
  return { slug, file };
}
