import { lstatSync, realpathSync } from "node:fs";
import { join, sep } from "node:path";
import { topFolder } from "./content-folder.ts";
import { FileError } from "./file-error.ts";
import type { SiteFile } from "./site-file.ts";
import { atSystem } from "./system-fault.ts";

/** Where a file of the site or a folder really is, behind all links. @throws FileError where that is nowhere or outside its home */
export function realPath(source: Pick<SiteFile, "base" | "file" | "home"> & FileError["source"]): string {
  const { base, file, home = topFolder(file) } = source;
  if (!isThere(base, file)) throw new FileError(source, { kind: "missing" });
  const real = atSystem(source, () => behindLinks(source, join(base, file)));
  const around = atSystem(source, () => realpathSync(join(base, home)));
  if (real === around || real.startsWith(around + sep)) return real;
  throw new FileError(source, { kind: "link-outside", home });
}

/** Whether something of this name is there: a file, or what must not stand in its place. */
export function isThere(base: string, file: string): boolean {
  try {
    atSystem({ file, kind: undefined }, () => lstatSync(join(base, file)));
    return true;
  } catch (error) {
    return !(error instanceof FileError && error.fault.kind === "missing");
  }
}

/** What is there and yet not found is a link. */
function behindLinks(source: FileError["source"], path: string): string {
  try {
    return realpathSync(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
    throw new FileError(source, { kind: "link-nowhere" });
  }
}
