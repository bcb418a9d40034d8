import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { MadeFile } from "./store.ts";

/** A file of a built site by its path below it, with the name of its contents. */
export type NamedFile = Pick<MadeFile, "path" | "name">;

/** Writes what was made into a site. */
export function writeMade(output: string, files: readonly MadeFile[]): void {
  const folders = new Set(files.map(({ path }) => dirname(path)));
  for (const folder of folders) mkdirSync(join(output, folder), { recursive: true });
  for (const { path, bytes } of files) writeFileSync(join(output, path), bytes);
}
