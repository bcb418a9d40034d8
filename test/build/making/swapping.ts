import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Files of the little sites that are swapped. */
export const FILES = 20;

/** A folder in which a little site is made and swapped by processes of their own. */
export interface Swapping {
  readonly base: string;
  /** Makes the site of a word; ends by itself, or is killed before a step. */
  readonly make: (word: string, stop?: string) => Promise<Ended>;
  /** The word that every file of dist holds; `none` without dist, `partial` where files lack or differ. */
  readonly word: () => string;
  /** What the workshop holds. */
  readonly left: () => string[];
  readonly remove: () => void;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly told: string;
}

export function newSwapping(): Swapping {
  const base = mkdtempSync(join(tmpdir(), "leaflight-swap-"));
  return {
    base,
    make: (word, stop) => runSwap(base, word, stop),
    word: () => wordOf(join(base, "dist")),
    left: () => readdirSync(join(base, ".cache/making")),
    remove: () => rmSync(base, { recursive: true, force: true }),
  };
}

/** Runs one transaction in a process of its own, as another user where one is named. */
export function runSwap(base: string, word: string, stop = "", uid?: number): Promise<Ended> {
  return new Promise((resolve) => {
    const args = [join(import.meta.dirname, "one-swap.ts"), base, word, String(FILES), stop];
    const child = spawn(process.execPath, args, { uid, gid: uid });
    let told = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (text: Buffer) => (told += text));
    child.on("close", (code, signal) => resolve({ code, signal, told }));
  });
}

/** The word that every file of a site of FILES files holds. */
export function wordOf(dist: string): string {
  if (!existsSync(dist)) return "none";
  const kits = join(dist, "kits");
  const words = new Set(readdirSync(kits).map((name) => readFileSync(join(kits, name), "utf8")));
  const [text = ""] = words;
  return words.size === 1 && readdirSync(kits).length === FILES ? text.slice(0, text.length / 1000) : "partial";
}
