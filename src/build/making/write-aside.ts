import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * Writes a file under another name in its folder, out to the disk, and then gives it its own, so that it is never there in part.
 * What is verified when it is read need not wait for the disk.
 */
export function writeAside(path: string, aside: string, bytes: Uint8Array, waits = true): void {
  const beside = join(dirname(path), aside);
  try {
    const file = openSync(beside, "w");
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      if (waits) fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
