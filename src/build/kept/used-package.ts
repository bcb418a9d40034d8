import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const require = createRequire(import.meta.url);

/** A package that the program uses. */
export interface UsedPackage {
  readonly folder: string;
  readonly version: string;
}

/** Finds a package that the program uses. @throws Error where it is not installed */
export function usedPackage(name: string): UsedPackage {
  for (let folder = dirname(require.resolve(name)); folder !== dirname(folder); folder = dirname(folder)) {
    const file = join(folder, "package.json");
    if (!existsSync(file)) continue;
    const stated = JSON.parse(readFileSync(file, "utf8")) as { readonly name?: string; readonly version?: string };
    if (stated.name === name && stated.version !== undefined) return { folder, version: stated.version };
  }
  throw new Error(`no version of ${name}`);
}
