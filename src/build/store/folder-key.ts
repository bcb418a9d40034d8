import { createHash, type Hash } from "node:crypto";
import { lstatSync, readdirSync, readFileSync, readlinkSync, realpathSync, type Stats, statSync } from "node:fs";
import { join, sep } from "node:path";

/** Larger files are none that a site reads: they are known by size and time, bytes. */
const LARGE = 100_000_000;

/** Names by what they are of, where they are followed. */
let followed: Map<string, { readonly path: string; readonly key: string }> | undefined;

/**
 * Names a file or a folder by all files in it: their paths and contents. Links are followed where they lead to something `within`
 * another folder; `without` are names right below it that do not count. What is not there has a name, too.
 */
export function folderKey(path: string, within: string, without: readonly string[] = []): string {
  const of = JSON.stringify([path, within, without]);
  const known = followed?.get(of);
  if (known) return known.key;
  const hash = createHash("sha256");
  addEntry(hash, path, { below: "", within: realPath(within), without, above: [] });
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
export function isStill(path: string, within: string): boolean {
  const of = JSON.stringify([path, within, []]);
  const known = followed?.get(of);
  followed?.delete(of);
  return known === undefined || folderKey(path, within) === known.key;
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(outer + sep);
}

interface Place {
  /** The path below the folder that is named. */
  readonly below: string;
  readonly within: string | undefined;
  readonly without: readonly string[];
  /** Folders that it stands in, as they are behind links. */
  readonly above: readonly string[];
}

function addEntry(hash: Hash, path: string, place: Place): void {
  const { below, within, without, above } = place;
  const note = (text: string): unknown => hash.update(`${JSON.stringify([below, text])}\n`);
  const own = lstatSync(path, { throwIfNoEntry: false });
  const real = realPath(path);
  if (own?.isSymbolicLink()) {
    note(readlinkSync(path));
    if (real === undefined || within === undefined || !real.startsWith(within + sep)) return;
  }
  const found = real === undefined ? undefined : statSync(real, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return void note(found?.isFile() ? digest(path, found) : "nothing");
  if (above.includes(real!)) return;
  for (const name of namesIn(path))
    if (!without.includes(name))
      addEntry(hash, join(path, name), { below: `${below}/${name}`, within, without: [], above: [...above, real!] });
}

/** Undefined where a path leads nowhere. */
function realPath(path: string): string | undefined {
  try {
    return realpathSync(path);
  } catch {
    return undefined;
  }
}

/** What cannot be read is told by who reads it for use. */
function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder).sort();
  } catch {
    return [];
  }
}

function digest(path: string, { size, mtimeMs }: Stats): string {
  if (size > LARGE) return `${size} ${mtimeMs}`;
  try {
    return createHash("sha256").update(readFileSync(path)).digest("hex");
  } catch (error) {
    return String((error as NodeJS.ErrnoException).code);
  }
}
