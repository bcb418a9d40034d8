import { spawn } from "node:child_process";
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

/** Runs Node with these words to its end, and measures it. @throws Error where it ends otherwise than well */
export function measure(
  cwd: string,
  words: readonly string[],
  variables: Readonly<Record<string, string>> = {},
): Promise<Used> {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-usage-"));
  const env = { ...process.env, ...variables, LEAFLIGHT_USAGE: folder, NODE_OPTIONS: `--import=${USAGE}` };
  const start = performance.now();
  const child = spawn(process.execPath, words, { cwd, env, stdio: ["ignore", "ignore", "pipe"] });
  let told = "";
  child.stderr.on("data", (text: Buffer) => {
    told = (told + text).slice(-4000);
  });
  return new Promise((resolve, reject) => {
    child.on("close", (code, signal) => {
      const wall = (performance.now() - start) / 1000;
      const used = usedIn(folder);
      rmSync(folder, { recursive: true });
      if (code === 0) resolve({ ...used, wall });
      else reject(new Error(`${words.join(" ")} ended with ${code ?? signal}: ${told}`));
    });
  });
}

function usedIn(folder: string): Omit<Used, "wall"> {
  const all = readdirSync(folder).map((file) => JSON.parse(readFileSync(join(folder, file), "utf8")));
  return { cpu: all.reduce((sum, { cpu }) => sum + cpu, 0), peak: Math.max(0, ...all.map(({ peak }) => peak)) };
}
