import * as say from "../../words/messages.ts";
import { BuildError } from "./build-error.ts";

/** What the system says when it cannot write or read, in words with a remedy. */
const FAULTS = {
  ENOSPC: say.diskFull,
  EDQUOT: say.diskQuota,
  EFBIG: say.diskFileSize,
  EROFS: say.diskReadOnly,
  EACCES: say.diskForbidden,
  EPERM: say.diskForbidden,
  EMFILE: say.diskOpenFiles,
  ENFILE: say.diskOpenFiles,
  EIO: say.diskFailing,
  ENOTDIR: say.diskNoFolder,
} as const satisfies Record<string, (args: { readonly path: string }) => string>;

const CODES = new RegExp(`\\b(${Object.keys(FAULTS).join("|")})\\b`);

/** An error of the disk as a message; undefined where it is none. Libraries wrap what the system said, and some keep its words only. */
export function diskFault(error: unknown, at: string): BuildError | undefined {
  for (let one = error, depth = 0; one instanceof Error && depth < 9; one = within(one), depth += 1) {
    if (one instanceof BuildError) return one;
    const { code = "", path, dest } = one as NodeJS.ErrnoException & { readonly dest?: string };
    const name = [code, CODES.exec(one.message)?.[1], spoken(one.message)].find((each) => each && each in FAULTS);
    if (name) return new BuildError(FAULTS[name as keyof typeof FAULTS]({ path: dest ?? path ?? at }));
  }
  return undefined;
}

/** Libraries that are not written for Node give the words of the C library. */
function spoken(message: string): string | undefined {
  if (/no space left on device/i.test(message)) return "ENOSPC";
  return /too many open files/i.test(message) ? "EMFILE" : undefined;
}

function within(error: Error): unknown {
  return error.cause ?? (error as { readonly originalError?: unknown }).originalError;
}
