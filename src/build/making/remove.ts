import { chmodSync, lstatSync, readdirSync, rmdirSync, unlinkSync } from "node:fs";
import { join } from "node:path";

/** Removes all below a path that can be removed, without following links, and gives what stays. Nothing there is nothing to do. */
export function removeAll(path: string): string[] {
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (found === undefined) return [];
  if (!found.isDirectory()) return attempt(path, () => unlinkSync(path));
  const names = namesIn(path);
  if (names === undefined) return [path];
  const left = names.flatMap((name) => removeAll(join(path, name)));
  return left.length > 0 ? left : attempt(path, () => rmdirSync(path));
}

/** Removes all below a path, also while threads of this process end what they were writing there. */
export function removeBusy(path: string): void {
  for (let tries = 0; removeAll(path).length > 0 && tries < 20; tries += 1)
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 25);
}

/** What stands in a folder; one that its owner locked is opened for it. */
function namesIn(folder: string): string[] | undefined {
  try {
    chmodSync(folder, 0o700);
  } catch {
    // Of another owner, or kept by the system: it may still be readable.
  }
  try {
    return readdirSync(folder);
  } catch {
    return undefined;
  }
}

function attempt(path: string, remove: () => void): string[] {
  try {
    remove();
    return [];
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "ENOENT" ? [] : [path];
  }
}
