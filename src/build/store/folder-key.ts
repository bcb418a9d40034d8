import { createHash, type Hash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** Longer than links lead through each other in anybody's content. */
const DEEPEST = 20;

/**
 * Names a folder by all files in it: their paths and contents, also behind links. `without` are names right below it that do not
 * count. A folder or file that is not there has a name, too.
 */
export function folderKey(path: string, without: readonly string[] = []): string {
  const hash = createHash("sha256");
  addEntry(hash, path, { below: "", depth: 0, without });
  return hash.digest("hex");
}

function addEntry(
  hash: Hash,
  path: string,
  { below, depth, without }: { readonly below: string; readonly depth: number; readonly without: readonly string[] },
): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isDirectory() && depth < DEEPEST) {
    for (const name of readdirSync(path).sort())
      if (!without.includes(name))
        addEntry(hash, join(path, name), { below: `${below}/${name}`, depth: depth + 1, without: [] });
    return;
  }
  hash.update(`${JSON.stringify(below)}${found?.isFile() ? digest(path) : "nothing"}\n`);
}

function digest(path: string): string {
  try {
    return createHash("sha256").update(readFileSync(path)).digest("hex");
  } catch (error) {
    // What cannot be read is told by who reads it for use.
    return String((error as NodeJS.ErrnoException).code);
  }
}
