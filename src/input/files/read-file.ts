import { closeSync, constants, type Dirent, fstatSync, lstatSync, openSync, readdirSync, readSync } from "node:fs";
import { BEGINNING } from "./content-kind.ts";
import { decodeText } from "./decode.ts";
import { FileError, type FileFault } from "./file-error.ts";
import { isThere, realPath } from "./real-path.ts";
import { FILE_LIMITS, MB, type SiteFile } from "./site-file.ts";
import { atSystem, otherThanFile } from "./system-fault.ts";

/** Never waits for the other end of a pipe, and follows no link that was put in its place meanwhile; Windows has neither. */
const CAREFULLY = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (constants.O_NOFOLLOW ?? 0);

/** The bytes of a regular file inside its home, up to the limit of its kind. @throws FileError */
export function readBytes(source: SiteFile): Buffer {
  const bytes = readWhole(source);
  if (bytes.length === 0) throw new FileError(source, { kind: "empty" });
  return bytes;
}

/** The same, where a file may be empty. @throws FileError */
export function readWhole(source: SiteFile): Buffer {
  return readUpTo(source, FILE_LIMITS[source.kind] * MB);
}

/** The first bytes of a file that passes as one of its kind from outside; its size is checked, too. @throws FileError */
export function readBeginning(source: SiteFile): Buffer {
  return readUpTo(source, FILE_LIMITS[source.kind] * MB, BEGINNING);
}

/** The text of a file, in UTF-8; of a table also in UTF-16 with a byte order mark. May be empty. @throws FileError */
export function readText(source: SiteFile): string {
  const decoded = decodeText(readWhole(source), { utf16: source.kind === "table" });
  if ("fault" in decoded) throw new FileError(source, decoded.fault);
  return decoded.text;
}

/** What a folder of the site holds, by name, but hidden files; nothing where it is not there. @throws FileError */
export function entriesIn(base: string, folder: string): Dirent[] {
  const source = { base, file: folder, kind: undefined };
  if (!isThere(base, folder)) return [];
  const path = realPath(source);
  if (!atSystem(source, () => lstatSync(path)).isDirectory()) throw new FileError(source, { kind: "not-a-folder" });
  const entries = atSystem(source, () => readdirSync(path, { withFileTypes: true }));
  return entries.filter(({ name }) => !name.startsWith(".")).sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Reads at most `wanted` bytes of a file that has at most `most`. */
function readUpTo(source: SiteFile, most: number, wanted = most): Buffer {
  const path = realPath(source);
  const refuse = (fault: FileFault | undefined): void => {
    if (fault) throw new FileError(source, fault);
  };
  // Opening a device may do something by itself: what is none is opened.
  refuse(otherThanFile(atSystem(source, () => lstatSync(path))));
  const handle = atSystem(source, () => openSync(path, CAREFULLY));
  try {
    const facts = fstatSync(handle);
    refuse(otherThanFile(facts));
    if (facts.size > most) refuse({ kind: "too-large", size: facts.size, most });
    const bytes = atSystem(source, () => readAll(handle, Math.min(wanted, most + 1), facts.size));
    if (bytes.length > most) refuse({ kind: "too-large", size: bytes.length, most });
    return bytes;
  } finally {
    closeSync(handle);
  }
}

/** Up to `most` bytes; a file may grow or shrink while it is read. */
function readAll(handle: number, most: number, expected: number): Buffer {
  let bytes = Buffer.alloc(Math.min(most, expected + 1));
  let length = 0;
  for (;;) {
    const count = readSync(handle, bytes, length, bytes.length - length, null);
    length += count;
    if (count === 0 || length >= most) return bytes.subarray(0, length);
    if (length === bytes.length)
      bytes = Buffer.concat([bytes, Buffer.alloc(Math.min(most - length, bytes.length + 1))]);
  }
}
