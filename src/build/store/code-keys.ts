import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { folderKey } from "./folder-key.ts";
import { lockedVersions } from "./locked-versions.ts";

/** The program's folder. */
const PROGRAM = join(import.meta.dirname, "../../..");

/** Where modules are named in a file; what is imported for its types alone does nothing. */
const IMPORTS =
  /(?:^|\n)\s*(?:import|export)\s+(?!type\b)(?:[^"';]*?\sfrom\s*)?"([^"\n]+)"|\b(?:import|resolve)\(\s*"([^"\n]+)"/g;

interface Module {
  readonly hash: string;
  readonly imports: readonly string[];
}

const modules = new Map<string, Module>();

/** Names of code that was asked for, by where it starts: code that runs stays what it was when it was loaded. */
const keys = new Map<string, string>();

/**
 * Names the code that starts at modules: all files of the program that they reach, and the versions of the packages that these
 * use with those that they use in turn. `folders` of the program are read, too.
 */
export function codeKey(entries: string | readonly string[], folders: readonly string[] = []): string {
  const of = [entries].flat();
  const key = keys.get(of.join("\n")) ?? keyFrom(of);
  keys.set(of.join("\n"), key);
  if (folders.length === 0) return key;
  const read = folders.map((folder) => folderKey(join(PROGRAM, folder), PROGRAM));
  return createHash("sha256")
    .update(JSON.stringify([key, read]))
    .digest("hex");
}

function keyFrom(entries: readonly string[]): string {
  const files = new Set(entries);
  const packages = new Set<string>();
  for (const file of files)
    for (const name of moduleAt(file).imports) {
      if (name.startsWith(".")) files.add(resolve(dirname(file), name));
      else if (!name.startsWith("node:")) packages.add(packageOf(name));
    }
  const sorted = [...files].sort().map((file) => [relative(PROGRAM, file), moduleAt(file).hash]);
  return createHash("sha256")
    .update(JSON.stringify([process.versions.v8, sorted, lockedVersions(PROGRAM, [...packages].sort())]))
    .digest("hex");
}

/** Files below a folder of the program are read anew: of code that is not run here, but bundled as it stands in its files. */
export function forgetCode(folder: string): void {
  for (const file of modules.keys()) if (file.startsWith(folder + sep)) modules.delete(file);
  keys.clear();
}

function moduleAt(file: string): Module {
  const known = modules.get(file);
  if (known) return known;
  const text = existsSync(file) ? readFileSync(file, "utf8") : "";
  const isCode = /\.[cm]?[jt]s$/.test(file);
  const module: Module = {
    hash: createHash("sha256").update(text).digest("hex"),
    imports: isCode ? [...text.matchAll(IMPORTS)].map(([, stated, asked]) => (stated ?? asked)!) : [],
  };
  modules.set(file, module);
  return module;
}

/** `@napi-rs/canvas` of `@napi-rs/canvas/node`. */
function packageOf(name: string): string {
  return name.split("/", name.startsWith("@") ? 2 : 1).join("/");
}
