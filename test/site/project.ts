import { execFile, spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, relative } from "node:path";
import { FIXTURES } from "../input/kit/kit-folders.ts";
import { commandWords } from "./command.ts";

/** Where a project keeps what it printed. */
export const PACKETS = ".cache/packets";

/** Where a project keeps what it made of kits. */
export const MADE = ".cache/made";

const BUILD = "src/build/build.ts";
const ROOT = join(import.meta.dirname, "../..");

/** How a build ended and what it told. */
export interface Built {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Longer than any build takes on a busy machine, ms. */
const PATIENCE = 600_000;

/** What in content is the program's own, not a maker's. */
const PROGRAM_CONTENT = ["content/words", "content/guide", "content/index.md"];

/** A project of its own in a temporary folder: the program's code and layouts, and the kits that a test puts into it. */
export interface Project {
  readonly folder: string;
  /** Writes a file below the project's folder. */
  readonly write: (path: string, text: string) => void;
  readonly read: (path: string) => string;
  /** Runs the build there, as `npm run build` does, with these variables besides the environment's and these options. */
  readonly build: (variables?: Readonly<Record<string, string>>, options?: readonly string[]) => Built;
  /** The same with another command of the program. */
  readonly run: (command: string, variables?: Readonly<Record<string, string>>, options?: readonly string[]) => Built;
  /** Builds while other things go on. */
  readonly buildAside: (variables?: Readonly<Record<string, string>>, options?: readonly string[]) => Promise<Built>;
  /** Every file below a folder with its size, sorted: to tell whether anything changed. */
  readonly list: (path: string) => string[];
  readonly remove: () => void;
}

export interface ProjectOptions {
  /** Fixtures that come along; all, where none are named. */
  readonly kits?: readonly string[];
  /** Whether the fixtures' class comes along. */
  readonly classes?: boolean;
  /** What need not be made again: folders of earlier work, each of the name that it has in a project's `.cache`. */
  readonly kept?: readonly string[];
  /** The folder that the project's lies in. */
  readonly parent?: string;
}

export function makeProject({ kits, classes = false, kept = [], parent = tmpdir() }: ProjectOptions = {}): Project {
  const folder = mkdtempSync(join(parent, "leaflight-"));
  for (const name of ["node_modules", "layouts", "src", ".eleventy.js", "package.json"])
    symlinkSync(join(ROOT, name), join(folder, name), statSync(join(ROOT, name)).isDirectory() ? "junction" : "file");
  for (const path of PROGRAM_CONTENT) cpSync(join(ROOT, path), join(folder, path), { recursive: true });
  cpSync(join(FIXTURES, "content"), join(folder, "content"), { recursive: true });
  for (const entry of readdirSync(join(folder, "content/kits"), { withFileTypes: true })) {
    if (entry.isDirectory() && kits && !kits.includes(entry.name))
      rmSync(join(folder, "content/kits", entry.name), { recursive: true });
  }
  if (!classes) rmSync(join(folder, "content/classes"), { recursive: true });
  linkKept(folder);
  for (const earlier of kept.filter((one) => existsSync(one)))
    cpSync(earlier, join(folder, ".cache", basename(earlier)), { recursive: true });
  const options = (variables: Readonly<Record<string, string>>) => ({
    cwd: folder,
    env: { ...process.env, ...variables },
    timeout: PATIENCE,
    maxBuffer: 1e8,
  });
  const run: Project["run"] = (command, variables = {}, given = []) => {
    const ended = spawnSync(process.execPath, commandWords(command, ...given), {
      ...options(variables),
      encoding: "utf8",
    });
    return { code: ended.status, stdout: ended.stdout, stderr: ended.stderr };
  };
  return {
    folder,
    write: (path, text) => {
      mkdirSync(join(folder, path, ".."), { recursive: true });
      writeFileSync(join(folder, path), text);
    },
    read: (path) => readFileSync(join(folder, path), "utf8"),
    run,
    build: (variables, given) => run(BUILD, variables, given),
    buildAside: (variables = {}, given = []) =>
      new Promise((resolve) => {
        const child = execFile(
          process.execPath,
          commandWords(BUILD, ...given),
          options(variables),
          (_, stdout, stderr) => resolve({ code: child.exitCode, stdout, stderr }),
        );
      }),
    list: (path) => listFiles(join(folder, path)),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** All projects keep what their scripts and the program's code were made into in one place, as nearly all have the same. */
function linkKept(folder: string): void {
  mkdirSync(join(folder, ".cache"));
  for (const kept of ["scripts", "code"]) {
    const shared = join(ROOT, `.cache/test-${kept}`);
    mkdirSync(shared, { recursive: true });
    symlinkSync(shared, join(folder, ".cache", kept), "junction");
  }
}

function listFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => `${relative(folder, path)} ${statSync(path).size} ${statSync(path).mtimeMs}`)
    .sort();
}
