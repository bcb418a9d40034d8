import { execFileSync } from "node:child_process";
import { setTimeout as wait } from "node:timers/promises";

/** A process that used no second of processor for so long has nothing to do, ms. */
const QUIET = 3000;

/** Waits until a process has nothing to do. */
export async function idle(pid: number): Promise<void> {
  for (let before = ""; ; ) {
    const now = execFileSync("ps", ["-o", "time=", "-p", String(pid)], { encoding: "utf8" });
    if (now === before) return;
    before = now;
    await wait(QUIET);
  }
}
