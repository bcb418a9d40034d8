import { existsSync } from "node:fs";
import { basename, join, relative, sep } from "node:path";
import { type FSWatcher, watch } from "chokidar";
import { contentPath, PROJECT_CONTENT } from "../../input/files/content-folder.ts";

/** A program that saves a file may take several steps: what follows so soon belongs to the same change, ms. */
const PAUSE = 25;

/** What of the project is looked at while it is served. */
function watchedPaths(): string[] {
  return [...new Set([PROJECT_CONTENT, contentPath(), "layouts", "src", ".eleventy.js"])];
}

/** Tells which files of the project `base` changed, by their paths below it with slashes. Settles when all are watched. */
export function watchProject(base: string, changed: (paths: readonly string[]) => void): Promise<FSWatcher> {
  let waiting = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const told = (path: string): void => {
    waiting.add(relative(base, path).split(sep).join("/"));
    clearTimeout(timer);
    timer = setTimeout(() => {
      const paths = [...waiting];
      waiting = new Set();
      changed(paths);
    }, PAUSE);
  };
  const paths = watchedPaths()
    .map((path) => join(base, path))
    .filter((path) => existsSync(path));
  const watcher = watch(paths, { ignoreInitial: true, ignored: (path) => isPassing(path, paths) });
  watcher.on("all", (_, path) => told(path));
  return new Promise((resolve) => watcher.once("ready", () => resolve(watcher)));
}

/** What editors leave beside a file while it is open. */
function isPassing(path: string, watched: readonly string[]): boolean {
  return !watched.includes(path) && /^\.|~$|^#|^4913$/.test(basename(path));
}
