import {
  chmodSync,
  closeSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  type Stats,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import type { DeskFile } from "./desk-file.ts";
import { bytesOf, markOf, type ReadText, readDeskText } from "./desk-text.ts";
import { type FaultFound, writeFault } from "./write-fault.ts";

/** What became of a text: it was written, somebody else wrote first, or nothing can be written. */
export type Swapped =
  | { readonly kind: "written"; readonly mark: string }
  | { readonly kind: "other"; readonly found: ReadText }
  | ({ readonly kind: "fault" } & FaultFound);

/** The bit of a file's mode that lets its owner write. */
const OWNER_WRITES = 0o200;
const PERMISSIONS = 0o7777;

let count = 0;

/**
 * Puts a text in the place of the one that `mark` names. It is written aside, out to the disk, and renamed, so that the file is
 * whole at every moment; mode, line ends and byte order mark stay. What another program writes into the file meanwhile is put
 * back and given. @throws KitError where the file cannot be read
 */
export function swapText(source: DeskFile, text: string, mark: string): Swapped {
  const found = readDeskText(source);
  if (found.mark !== mark) return { kind: "other", found };
  const path = join(source.base, source.file);
  const stands = lstatSync(path);
  if (stands.isSymbolicLink()) return { kind: "fault", fault: "link", code: "" };
  if ((stands.mode & OWNER_WRITES) === 0) return { kind: "fault", fault: "read-only", code: "" };
  const bytes = bytesOf(text, found.form);
  count += 1;
  const aside = beside(path, `new-${process.pid}-${count}`);
  const before = beside(path, `old-${process.pid}-${count}`);
  try {
    writeOut(aside, bytes, stands);
    if (!exchange({ path, aside, before, stands, mark })) return { kind: "other", found: readDeskText(source) };
    return { kind: "written", mark: markOf(bytes) };
  } catch (error) {
    const fault = writeFault(error);
    if (!fault) throw error;
    return { kind: "fault", ...fault };
  } finally {
    for (const left of [aside, before]) rmSync(left, { force: true });
  }
}

/** A hidden name beside a file: neither readers nor watchers see it. */
function beside(path: string, name: string): string {
  return join(dirname(path), `.${basename(path)}.${name}`);
}

function writeOut(path: string, bytes: Buffer, { mode }: Stats): void {
  const file = openSync(path, "wx");
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  chmodSync(path, mode & PERMISSIONS);
}

interface Exchange {
  readonly path: string;
  readonly aside: string;
  readonly before: string;
  readonly stands: Stats;
  readonly mark: string;
}

/**
 * Puts `aside` in the place of `path`, if that is still what was read. A second name keeps hold of what stands there to the very
 * end: what a program writes into the file, or puts in its place, is seen and put back. Only what is put there between taking
 * hold and renaming is lost: nothing in Node exchanges two files at once.
 */
function exchange({ path, aside, before, stands, mark }: Exchange): boolean {
  const isAsRead = (name: string): boolean => lstatSync(name).ino === stands.ino && markOf(readFileSync(name)) === mark;
  if (!isAsRead(path)) return false;
  linkSync(path, before);
  renameSync(aside, path);
  if (isAsRead(before)) return true;
  renameSync(before, path);
  return false;
}
