import * as say from "../../words/messages.ts";

/** Why nothing can be written, by the machine or by what lies in its place. */
export type WriteFault = "link" | "read-only" | "forbidden" | "full" | "failing";

/** A fault, and the system's name of it. */
export interface FaultFound {
  readonly fault: WriteFault;
  readonly code: string;
}

/** What the system says, and what that is. */
const FAULTS: Readonly<Record<string, WriteFault>> = {
  ENOSPC: "full",
  EDQUOT: "full",
  EFBIG: "full",
  EROFS: "read-only",
  EACCES: "forbidden",
  EPERM: "forbidden",
};

/** What the system refused; undefined for an error that is not the system's. */
export function writeFault(error: unknown): FaultFound | undefined {
  const { code, syscall } = error as NodeJS.ErrnoException;
  return code === undefined || syscall === undefined ? undefined : { fault: FAULTS[code] ?? "failing", code };
}

/** The same in one sentence with what to do. */
export function writeFaultText({ fault, code }: FaultFound): string {
  return say.deskUnwritable({ why: fault, code });
}
