import { createHash, type Hash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, sep } from "node:path";

/** Longer than links lead through each other in anybody's content. */
const DEEPEST = 20;

/** Names by what they are of, where they are followed. */
let followed: Map<string, { readonly path: string; readonly key: string }> | undefined;

/**
 * Names a folder by all files in it: their paths and contents, also behind links. `without` are names right below it that do not
 * count. A folder or file that is not there has a name, too.
 */
export function folderKey(path: string, without: readonly string[] = []): string {
  const of = JSON.stringify([path, without]);
  const known = followed?.get(of);
  if (known) return known.key;
  const hash = createHash("sha256");
  addEntry(hash, path, { below: "", depth: 0, without });
  const key = hash.digest("hex");
  followed?.set(of, { path, key });
  return key;
}

/** From now on, until the answer is called, this thread looks at a folder again only when it is told that something in it changed. */
export function followFolders(): () => void {
  followed ??= new Map();
  return () => {
    followed = undefined;
  };
}

/** Something changed at a path, or, where none is given, anywhere. */
export function folderChanged(changed?: string): void {
  for (const [of, { path }] of followed ?? [])
    if (changed === undefined || isWithin(changed, path) || isWithin(path, changed)) followed!.delete(of);
}

/** Whether a followed folder is as it was named, looked at anew. */
export function isStill(path: string): boolean {
  const of = JSON.stringify([path, []]);
  const known = followed?.get(of);
  followed?.delete(of);
  return known === undefined || folderKey(path) === known.key;
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(outer + sep);
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
