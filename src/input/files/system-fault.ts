import type { Stats } from "node:fs";
import { FileError, type FileFault } from "./file-error.ts";

const FAULTS: Readonly<Record<string, FileFault>> = {
  ENOENT: { kind: "missing" },
  ENOTDIR: { kind: "missing" },
  ENAMETOOLONG: { kind: "missing" },
  // A name that holds NUL.
  ERR_INVALID_ARG_VALUE: { kind: "missing" },
  ELOOP: { kind: "link-nowhere" },
  EACCES: { kind: "forbidden" },
  EPERM: { kind: "forbidden" },
  EISDIR: { kind: "not-a-file", is: "folder" },
};

/** Asks the system something about a file; what it answers in place of a result becomes a fault. @throws FileError */
export function atSystem<T>(source: FileError["source"], ask: () => T): T {
  try {
    return ask();
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw new FileError(source, FAULTS[code] ?? { kind: "unreadable", code });
  }
}

/** What stands in place of a regular file. */
export function otherThanFile(facts: Stats): FileFault | undefined {
  if (facts.isFile()) return undefined;
  if (facts.isDirectory()) return { kind: "not-a-file", is: "folder" };
  if (facts.isFIFO()) return { kind: "not-a-file", is: "pipe" };
  return { kind: "not-a-file", is: facts.isSocket() ? "socket" : "device" };
}
