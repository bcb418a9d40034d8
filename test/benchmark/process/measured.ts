import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** What a command used, with every Node that it started; browsers and other programs are not in it. */
export interface Used {
  /** Seconds of processor. */
  readonly cpu: number;
  /** Greatest memory of one process, bytes. */
  readonly peak: number;
  /** Seconds from start to end. */
  readonly wall: number;
}

const USAGE = pathToFileURL(join(import.meta.dirname, "usage.ts")).href;

/** A command that runs in a folder. */
export interface Started {
  readonly child: ChildProcess;
  /** What it used once it has ended. @throws Error where it ended otherwise than well */
  readonly ended: Promise<Used>;
}

/** Starts Node with these words, and measures it. */
export function startMeasured(cwd: string, words: readonly string[]): Started {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-usage-"));
  const env = { ...process.env, LEAFLIGHT_USAGE: folder, NODE_OPTIONS: `--import=${USAGE}` };
  const start = performance.now();
  const child = spawn(process.execPath, words, { cwd, env, stdio: ["ignore", "ignore", "pipe"] });
  let told = "";
  child.stderr!.on("data", (text: Buffer) => {
    told = (told + text).slice(-4000);
  });
  const ended = new Promise<Used>((resolve, reject) => {
    child.on("close", (code, signal) => {
      const wall = (performance.now() - start) / 1000;
      const used = usedIn(folder);
      rmSync(folder, { recursive: true });
      if (code === 0) resolve({ ...used, wall });
      else reject(new Error(`${words.join(" ")} ended with ${code ?? signal}: ${told}`));
    });
  });
  return { child, ended };
}

/** Runs Node with these words to its end. */
export function measure(cwd: string, words: readonly string[]): Promise<Used> {
  return startMeasured(cwd, words).ended;
}

function usedIn(folder: string): Omit<Used, "wall"> {
  const all = readdirSync(folder).map((file) => JSON.parse(readFileSync(join(folder, file), "utf8")));
  return { cpu: all.reduce((sum, { cpu }) => sum + cpu, 0), peak: Math.max(0, ...all.map(({ peak }) => peak)) };
}
