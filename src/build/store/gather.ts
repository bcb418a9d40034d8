import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { filesBelow } from "./files-below.ts";
import { type MadeFile, nameOf } from "./store.ts";

/** Style sheets and scripts that Eleventy writes once for all pages that name them. */
const BUNDLE = /(?:href|src)="[^"]*?(bundle\/[^"]+)"/g;

/** All files that are written into a new folder in `aside`, which is taken away again, in the order of their paths. */
export async function gatherMade(aside: string, write: (folder: string) => Promise<void>): Promise<MadeFile[]> {
  const scratch = mkdtempSync(join(aside, "made-"));
  try {
    await write(scratch);
    return filesBelow(scratch).map(({ path, file }) => {
      const bytes = readFileSync(file);
      return { path, bytes, name: nameOf(bytes) };
    });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** Of files, those that are a part's own, with the bundles that its pages name. */
export function filesOf(files: readonly MadeFile[], isOwn: (path: string) => boolean): MadeFile[] {
  const own = files.filter(({ path }) => isOwn(path));
  const pages = own.filter(({ path }) => path.endsWith(".html"));
  const named = new Set(
    pages.flatMap(({ bytes }) => [...Buffer.from(bytes).toString("utf8").matchAll(BUNDLE)].map(([, path]) => path)),
  );
  return [...own, ...files.filter(({ path }) => named.has(path))];
}
