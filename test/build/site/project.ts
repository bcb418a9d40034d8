import { spawnSync } from "node:child_process";
import {
  cpSync,
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
import { join, relative } from "node:path";
import { FIXTURES } from "../../input/kit/kit-folders.ts";

const ROOT = join(import.meta.dirname, "../../..");

/** What in content is the program's own, not a maker's. */
const PROGRAM_CONTENT = [
  "content/words",
  "content/guide",
  "content/index.md",
  "content/kits/kits.11tydata.js",
  "content/classes/classes.11tydata.js",
];

/** A project of its own in a temporary folder: the program's code and layouts, and the kits that a test puts into it. */
export interface Project {
  readonly folder: string;
  /** Writes a file below the project's folder. */
  readonly write: (path: string, text: string) => void;
  readonly read: (path: string) => string;
  /** Runs src/build.ts there, as `npm run build` does, with these variables besides the environment's and these options. */
  readonly build: (
    variables?: Readonly<Record<string, string>>,
    options?: readonly string[],
  ) => {
    readonly code: number | null;
    readonly stdout: string;
    readonly stderr: string;
  };
  /** Every file below a folder with its size, sorted: to tell whether anything changed. */
  readonly list: (path: string) => string[];
  readonly remove: () => void;
}

/** Without `kits`, all fixtures come along, otherwise just those named; the fixtures’ class only where it is asked for. */
export function makeProject(options: { kits?: readonly string[]; classes?: boolean } = {}): Project {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-"));
  for (const name of ["node_modules", "layouts", "src", ".eleventy.js", "package.json"])
    symlinkSync(join(ROOT, name), join(folder, name));
  for (const path of PROGRAM_CONTENT) cpSync(join(ROOT, path), join(folder, path), { recursive: true });
  cpSync(join(FIXTURES, "content"), join(folder, "content"), { recursive: true });
  for (const entry of readdirSync(join(folder, "content/kits"), { withFileTypes: true })) {
    if (entry.isDirectory() && options.kits && !options.kits.includes(entry.name))
      rmSync(join(folder, "content/kits", entry.name), { recursive: true });
  }
  if (!options.classes) rmSync(join(folder, "content/classes"), { recursive: true });
  return {
    folder,
    write: (path, text) => {
      mkdirSync(join(folder, path, ".."), { recursive: true });
      writeFileSync(join(folder, path), text);
    },
    read: (path) => readFileSync(join(folder, path), "utf8"),
    build: (variables = {}, given = []) => {
      const env = { ...process.env, ...variables };
      const run = spawnSync(process.execPath, ["src/build/build.ts", ...given], {
        cwd: folder,
        env,
        encoding: "utf8",
        timeout: 280_000,
      });
      return { code: run.status, stdout: run.stdout, stderr: run.stderr };
    },
    list: (path) => listFiles(join(folder, path)),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

function listFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => `${relative(folder, path)} ${statSync(path).size} ${statSync(path).mtimeMs}`)
    .sort();
}
