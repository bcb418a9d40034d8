import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** What lies in a folder though nothing names it. */
export interface Strays {
  /** The folder below the project, `content/kits/moon`. */
  readonly folder: string;
  /** Names in it, sorted; those of folders end in a slash. */
  readonly names: readonly string[];
}

/**
 * What a folder of the project `base` holds beside the files that are `named` (below it), with the folders of these.
 * Hidden files are their owner's business. None where there is nothing, or no such folder.
 */
export function straysIn(base: string, folder: string, named: readonly string[]): Strays[] {
  const path = join(base, folder);
  const known = new Set(named.map((file) => file.replace(/^\.\//, "").split("/")[0]));
  const entries = existsSync(path) ? readdirSync(path, { withFileTypes: true }) : [];
  const names = entries
    .filter(({ name }) => !name.startsWith(".") && !known.has(name))
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name));
  return names.length > 0 ? [{ folder, names: names.sort() }] : [];
}
