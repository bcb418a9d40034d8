import { spawn } from "node:child_process";
import { realpathSync, statSync } from "node:fs";
import { endGroup } from "./process-group.ts";

/** How long a browser may take to say its version, ms. */
const PATIENCE = 10_000;
/** How long what a browser wrote may still be on its way once it has ended, ms. */
const TRAILING = 2000;

/** The version that a browser states; where it states none, what tells its file from another. */
export async function statedVersion(path: string): Promise<string> {
  // On Windows the browser opens a window instead of answering.
  const stated = process.platform === "win32" ? "" : await answer(path);
  if (/\d+\.\d+/.test(stated)) return stated.trim().slice(0, 200);
  const { size, mtimeMs } = statSync(realpathSync(path));
  return `file ${size} ${Math.floor(mtimeMs)}`;
}

function answer(path: string): Promise<string> {
  return new Promise((resolve) => {
    const child = spawn(path, ["--version"], { detached: true, stdio: ["ignore", "pipe", "ignore"] });
    let said = "";
    const end = (): void => {
      clearTimeout(bound);
      endGroup(child);
      child.stdout.destroy();
      resolve(said);
    };
    let bound = setTimeout(end, PATIENCE);
    child.stdout.on("data", (text: Buffer) => {
      said = (said + text.toString()).slice(0, 1000);
    });
    child.once("error", end);
    child.once("close", end);
    // What it wrote may arrive after it has ended; what it started, and what keeps its output open, ends with its group.
    child.once("exit", () => {
      endGroup(child);
      clearTimeout(bound);
      bound = setTimeout(end, TRAILING);
    });
  });
}
