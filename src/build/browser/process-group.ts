import { type ChildProcess, spawnSync } from "node:child_process";

/** Ends a process that was started detached, with all that it started. */
export function endGroup({ pid, killed }: Pick<ChildProcess, "pid" | "killed">): void {
  if (pid === undefined || killed) return;
  if (process.platform === "win32") {
    spawnSync("taskkill", ["/pid", String(pid), "/T", "/F"], { stdio: "ignore" });
    return;
  }
  try {
    process.kill(-pid, "SIGKILL");
  } catch {
    // All of it has ended.
  }
}
