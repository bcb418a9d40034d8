import { accessSync, constants, mkdirSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import { isGone, isOwner, ownName } from "./owner.ts";
import { removeAll } from "./remove.ts";

/**
 * The folder in which sites are made for a target: in the cache, or beside the target where the cache is on another device,
 * as a site is put in place by renaming. @throws Error of the system where neither can be written
 */
export function openWorkshop(base: string, target: string): string {
  const inCache = join(base, ".cache/making");
  try {
    return opened(inCache, target);
  } catch {
    return opened(join(dirname(target), `.${basename(target)}-making`), target);
  }
}

function opened(folder: string, target: string): string {
  mkdirSync(folder, { recursive: true });
  accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  if (statSync(folder).dev !== statSync(dirname(target)).dev)
    throw Object.assign(new Error(`EXDEV: ${folder}`), { code: "EXDEV", path: folder });
  return folder;
}

/** What is made for a target has a name of its own in the workshop: sites of one project may be made side by side. */
export function targetName(workshop: string, target: string): string {
  return relative(workshop, target)
    .replace(/^(\.\.[/\\])+/, "")
    .replace(/[^\p{L}\p{N}.-]+/gu, "_");
}

/** A new folder of this process; the count tells several apart. */
export function ownFolder(workshop: string): string {
  mkdirSync(join(workshop, ownName()), { mode: 0o700 });
  return ownName();
}

/** Removes what processes that are gone have left. Gives what cannot be removed. */
export function clearLeftovers(workshop: string): string[] {
  return readdirSync(workshop)
    .filter((name) => {
      const owner = name.replace(/\.key$/, "");
      return isOwner(owner) && isGone(owner);
    })
    .flatMap((name) => removeAll(join(workshop, name)));
}
