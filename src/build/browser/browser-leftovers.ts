import { spawnSync } from "node:child_process";
import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isGone } from "../making/owner.ts";
import { removeAll } from "../making/remove.ts";

/** Names, in the environment of a browser and of all that it starts, the process that started it. */
export const OWNER_MARK = "LEAFLIGHT_OWNER";

/** A folder of a browser, or one that it was unpacked into. */
const FOLDER = /^leaflight-(\d+-[0-9a-z]+-[0-9a-f]{8})-/;

/**
 * Ends browsers whose build was killed, and clears their folders. One is ended only where it carries the mark of a process that
 * is gone, or works in its folder.
 */
export function clearBrowsers(): void {
  for (const { number, owner } of marked()) if (isGone(owner)) endProcess(number);
  for (const name of namesIn(tmpdir())) {
    const owner = FOLDER.exec(name)?.[1];
    if (owner !== undefined && isGone(owner) && isMine(join(tmpdir(), name))) removeAll(join(tmpdir(), name));
  }
}

interface Marked {
  readonly number: number;
  readonly owner: string;
}

function marked(): Marked[] {
  if (process.platform === "win32") return [];
  return process.platform === "linux" ? markedByProc() : markedByPs();
}

function markedByProc(): Marked[] {
  return namesIn("/proc").flatMap((name) => {
    if (!/^\d+$/.test(name)) return [];
    try {
      const text = ["environ", "cmdline"].map((file) => readFileSync(`/proc/${name}/${file}`, "latin1")).join("\0");
      return ownerIn(Number(name), text);
    } catch {
      return [];
    }
  });
}

function markedByPs(): Marked[] {
  const { stdout } = spawnSync("ps", ["-x", "-o", "pid=,command="], { encoding: "utf8", maxBuffer: 1e8 });
  return (stdout ?? "").split("\n").flatMap((line) => ownerIn(Number.parseInt(line, 10), line));
}

function ownerIn(number: number, text: string): Marked[] {
  const owner = new RegExp(
    `(?:^|\\0)${OWNER_MARK}=([0-9a-z-]+)|user-data-dir=[^\\0]*?/leaflight-([0-9]+-[0-9a-z]+-[0-9a-f]{8})-`,
  ).exec(text);
  return owner && number !== process.pid ? [{ number, owner: (owner[1] ?? owner[2])! }] : [];
}

function endProcess(number: number): void {
  try {
    process.kill(number, "SIGKILL");
  } catch {
    // It has ended, or is another user's.
  }
}

function isMine(folder: string): boolean {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  return found?.isDirectory() === true && (process.getuid === undefined || found.uid === process.getuid());
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
