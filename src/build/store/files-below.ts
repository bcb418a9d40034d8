import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** A file by its path below a folder, with slashes, and where it stands. */
export interface FileBelow {
  readonly path: string;
  readonly file: string;
}

/** All files below a folder, in the order of their paths. */
export function filesBelow(folder: string): FileBelow[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ path: relative(folder, file).split(sep).join("/"), file }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
