import { mkdirSync } from "node:fs";
import { join, relative } from "node:path";
import { inTransaction } from "./making/transaction.ts";

/** Where something is made before it is put in place; paths from the project. */
export interface Folders {
  readonly output: string;
  /** An empty folder beside it. */
  readonly aside: string;
}

/** Makes an output as a whole or not at all. @throws BuildError where the disk or another build is in the way; what `make` throws */
export async function inFolders<T>(base: string, output: string, make: (folders: Folders) => Promise<T>): Promise<T> {
  return await inTransaction({ base, output }, (folder) => {
    const aside = join(folder, "../aside");
    mkdirSync(aside, { recursive: true });
    return make({ output: relative(base, folder), aside: relative(base, aside) });
  });
}
