import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync, readlinkSync } from "node:fs";
import { hostname } from "node:os";

/** What a process is called where it leaves something: number, start, machine. A number alone is given out again. */
const OWNER = /^(\d+)-([0-9a-z]+)-([0-9a-f]{8})$/;
const GONE = "gone";
/** The start of a process that runs, where the system does not tell it. */
const UNKNOWN = "unknown";

let own: string | undefined;

/** The name of this process. */
export function ownName(): string {
  own ??= `${process.pid}-${startOf(process.pid)}-${machine()}`;
  return own;
}

/** Whether a name is one that `ownName` gives. */
export function isOwner(name: string): boolean {
  return OWNER.test(name);
}

/** The number of the process in a name. */
export function numberOf(name: string): string {
  return OWNER.exec(name)?.[1] ?? "?";
}

/** Whether the process of this name has ended. One on another machine is taken to run, as nothing here can tell. */
export function isGone(name: string): boolean {
  const [, number, start, on] = OWNER.exec(name) ?? [];
  if (number === undefined || on !== machine()) return false;
  const now = startOf(Number(number));
  return now === GONE || (now !== UNKNOWN && start !== UNKNOWN && now !== start);
}

/** The machine and, in a container, its own count of processes. */
function machine(): string {
  let count = "";
  try {
    count = readlinkSync("/proc/self/ns/pid");
  } catch {
    // Other systems have one count.
  }
  return createHash("sha256").update(`${hostname()} ${count}`).digest("hex").slice(0, 8);
}

/** When a process began, as the system counts it; an ended one that nobody has asked after counts as gone. */
function startOf(number: number): string {
  if (process.platform === "linux") {
    try {
      // proc(5): the name in brackets may hold anything; the state is the first field after it, the start the twentieth.
      const stat = readFileSync(`/proc/${number}/stat`, "latin1");
      const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
      return /[ZXx]/.test(fields[0]!) ? GONE : fields[19]!;
    } catch {
      return runs(number) ? UNKNOWN : GONE;
    }
  }
  if (process.platform === "win32") return runs(number) ? UNKNOWN : GONE;
  const { status, stdout } = spawnSync("ps", ["-o", "lstart=", "-p", String(number)], { encoding: "utf8" });
  if (status !== 0 || stdout.trim() === "") return runs(number) ? UNKNOWN : GONE;
  return createHash("sha256").update(stdout.trim()).digest("hex").slice(0, 12);
}

function runs(number: number): boolean {
  try {
    process.kill(number, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
