import { toldOfFile } from "./file-message.ts";
import { entriesIn } from "./read-file.ts";

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
  const known = new Set(named.map((file) => file.replace(/^\.\//, "").split("/")[0]));
  const names = toldOfFile(() => entriesIn(base, folder))
    .filter(({ name }) => !known.has(name))
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name));
  return names.length > 0 ? [{ folder, names: names.sort() }] : [];
}
