import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
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

/**
 * Names the code that starts at modules: all files of the program that they reach, and the versions of the packages that these
 * use with those that they use in turn. `folders` of the program are read, too.
 */
export function codeKey(entries: string | readonly string[], folders: readonly string[] = []): string {
  const files = new Set([entries].flat());
  const packages = new Set<string>();
  for (const file of files)
    for (const name of moduleAt(file).imports) {
      if (name.startsWith(".")) files.add(resolve(dirname(file), name));
      else if (!name.startsWith("node:")) packages.add(packageOf(name));
    }
  const sorted = [...files].sort().map((file) => [relative(PROGRAM, file), moduleAt(file).hash]);
  return createHash("sha256")
    .update(JSON.stringify([process.versions.v8, sorted, lockedVersions(PROGRAM, [...packages].sort())]))
    .update(JSON.stringify(folders.map((folder) => folderKey(join(PROGRAM, folder), PROGRAM))))
    .digest("hex");
}

/** Files of the program that change while it runs are read anew. */
export function forgetCode(): void {
  modules.clear();
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
