import { readdirSync, readFileSync } from "node:fs";

/** Numbers of the processes whose environment or command names a text (Linux). */
export function processesWith(text: string): number[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .filter((name) => {
      try {
        if (/^\S+ \(.*\) [ZX]/s.test(readFileSync(`/proc/${name}/stat`, "latin1"))) return false;
        return ["environ", "cmdline"].some((file) => readFileSync(`/proc/${name}/${file}`, "latin1").includes(text));
      } catch {
        return false;
      }
    })
    .map(Number);
}
