import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

interface LockedPackage {
  readonly version?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

type Lock = Readonly<Record<string, LockedPackage>>;

const locks = new Map<string, Lock>();

/** Versions of packages and of all that they depend on, as the lock file of a project names them, sorted. */
export function lockedVersions(project: string, names: readonly string[]): string[] {
  const lock = lockOf(project);
  const reached = new Set<string>();
  const reach = (from: string, needed: readonly string[]): void => {
    for (const name of needed) {
      const place = placeOf(lock, from, name);
      if (place !== undefined) reached.add(place);
    }
  };
  reach("", names);
  for (const place of reached) {
    const { dependencies, optionalDependencies } = lock[place]!;
    reach(place, Object.keys({ ...dependencies, ...optionalDependencies }));
  }
  return [...reached].sort().map((place) => `${place} ${lock[place]!.version}`);
}

/** Where a package is found from where another stands: the nearest folder of packages that has it. */
function placeOf(lock: Lock, from: string, name: string): string | undefined {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    const place = `${folder === "" ? "" : `${folder}/`}node_modules/${name}`;
    if (lock[place]) return place;
    if (folder === "") return undefined;
  }
}

function lockOf(project: string): Lock {
  const known = locks.get(project);
  if (known) return known;
  const file = join(project, "package-lock.json");
  const lock = existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as { readonly packages: Lock }).packages : {};
  locks.set(project, lock);
  return lock;
}
