import { mkdirSync, readdirSync, readFileSync, renameSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { BuildError } from "../errors/build-error.ts";
import { isGone, numberOf, ownName } from "./owner.ts";

/** Who holds a lock, and the folder that is the lock. */
interface Holder {
  readonly number: string;
  readonly host: string;
  readonly lock: string;
}

export interface Waiting {
  /** Told once, when the lock is another's. */
  readonly tell: (holder: Holder) => void;
  /** Says why it is not waited for any longer. */
  readonly busy: (holder: Holder) => string;
  /** How long to wait for it, ms. */
  readonly patience: number;
}

/** Between two looks at a lock that is another's, ms. */
const LOOK = 200;

/**
 * Holds the lock `name` in `folder`; the answer lets it go. The lock is a folder that holds one empty name: it comes into
 * being whole by renaming, and one whose process is gone is taken over by renaming that name, which only one can do.
 * @throws BuildError where another keeps it longer than the patience
 */
export async function holdLock(folder: string, name: string, { tell, busy, patience }: Waiting): Promise<() => void> {
  const lock = join(folder, `${name}.lock`);
  const until = performance.now() + patience;
  let told = false;
  for (;;) {
    if (takeFree(folder, lock) || takeOver(lock)) return () => letGo(folder, lock);
    const holder = holderOf(lock);
    if (holder) {
      if (performance.now() >= until) throw new BuildError(busy(holder));
      if (!told && patience > 0) tell(holder);
      told = true;
    }
    await sleep(holder ? LOOK : 1);
  }
}

function takeFree(folder: string, lock: string): boolean {
  const ready = join(folder, `${ownName()}.key`);
  mkdirSync(ready, { recursive: true });
  writeFileSync(join(ready, ownName()), hostname());
  try {
    renameSync(ready, lock);
    return true;
  } catch (error) {
    rmSync(ready, { recursive: true, force: true });
    const code = codeOf(error);
    // Another's; it may be let go in this very moment.
    if (code === "ENOTEMPTY" || code === "EEXIST") return false;
    // Some systems refuse in this way to put a folder in the place of one that is not empty.
    if ((code === "EPERM" || code === "EACCES") && namesIn(lock) !== undefined) return false;
    throw error;
  }
}

function takeOver(lock: string): boolean {
  const names = namesIn(lock) ?? [];
  if (names.length === 0) dropEmpty(lock);
  const [holder] = names;
  if (holder === undefined || !isGone(holder)) return false;
  try {
    renameSync(join(lock, holder), join(lock, ownName()));
    return true;
  } catch (error) {
    if (codeOf(error) === "ENOENT") return false;
    throw error;
  }
}

/** A folder without a name stands in the way only where renaming does not replace it. */
function dropEmpty(lock: string): void {
  try {
    rmdirSync(lock);
  } catch {
    // Another was quicker.
  }
}

function letGo(folder: string, lock: string): void {
  const done = join(folder, `${ownName()}.key`);
  try {
    renameSync(lock, done);
    rmSync(done, { recursive: true, force: true });
  } catch {
    // The next start takes it over.
  }
}

function holderOf(lock: string): Holder | undefined {
  const [name] = namesIn(lock) ?? [];
  if (name === undefined) return undefined;
  try {
    return { number: numberOf(name), host: readFileSync(join(lock, name), "utf8").slice(0, 100), lock };
  } catch {
    return undefined;
  }
}

function namesIn(lock: string): string[] | undefined {
  try {
    return readdirSync(lock);
  } catch {
    return undefined;
  }
}

function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? "";
}
