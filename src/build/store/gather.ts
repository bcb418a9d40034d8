import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { type MadeFile, nameOf } from "./store.ts";

/** Style sheets and scripts that Eleventy writes once for all pages that name them. */
const BUNDLE = /(?:href|src)="[^"]*?(bundle\/[^"]+)"/g;

/** All files below a folder, in the order of their paths. */
export function gatherFiles(folder: string): MadeFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const file = join(entry.parentPath, entry.name);
      const bytes = readFileSync(file);
      return { path: relative(folder, file).split(sep).join("/"), bytes, name: nameOf(bytes) };
    })
    .sort((a, b) => (a.path < b.path ? -1 : 1));
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
