import { closeSync, constants, fstatSync, lstatSync, openSync, readdirSync, readSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { ArchivedFile } from "./tar.ts";

const CHUNK = 1 << 20;

/** Whether a folder is this user's, and no other can write there. */
export function isPrivate(folder: string): boolean {
  const found = lstatSync(folder);
  return found.isDirectory() && isOwn(found);
}

/** Whether a private folder holds these files, byte for byte, and no others. */
export function holds(folder: string, files: readonly ArchivedFile[]): boolean {
  if (!lstatSync(folder, { throwIfNoEntry: false }) || !isPrivate(folder)) return false;
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  if (entries.some((entry) => entry.isDirectory() && !isPrivate(join(entry.parentPath, entry.name)))) return false;
  const found = entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"));
  const wanted = new Set(files.map(({ path }) => path));
  if (found.length !== wanted.size || found.some((path) => !wanted.has(path))) return false;
  return files.every(({ path, bytes }) => isSame(join(folder, path), bytes));
}

function isOwn({ uid, mode }: { readonly uid: number; readonly mode: number }): boolean {
  return process.getuid === undefined || (uid === process.getuid() && (mode & 0o022) === 0);
}

function isSame(path: string, bytes: Buffer): boolean {
  let file: number;
  try {
    file = openSync(path, constants.O_RDONLY | constants.O_NOFOLLOW | constants.O_NONBLOCK);
  } catch {
    return false;
  }
  try {
    const found = fstatSync(file);
    if (!found.isFile() || !isOwn(found) || (found.mode & 0o500) !== 0o500 || found.size !== bytes.length) return false;
    const chunk = Buffer.alloc(CHUNK);
    for (let at = 0; at < bytes.length; at += CHUNK) {
      const read = readSync(file, chunk, 0, CHUNK, at);
      if (!chunk.subarray(0, read).equals(bytes.subarray(at, at + CHUNK))) return false;
    }
    return true;
  } finally {
    closeSync(file);
  }
}
