import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The version of a package that the program uses: what was made with another is made anew. */
export function packageVersion(name: string): string {
  for (
    let folder = dirname(fileURLToPath(import.meta.resolve(name)));
    folder !== dirname(folder);
    folder = dirname(folder)
  ) {
    const file = join(folder, "package.json");
    if (!existsSync(file)) continue;
    const stated = JSON.parse(readFileSync(file, "utf8")) as { readonly name?: string; readonly version?: string };
    if (stated.name === name && stated.version !== undefined) return stated.version;
  }
  throw new Error(`no version of ${name}`);
}
