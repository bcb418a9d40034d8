import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Answers } from "../../core/beginning/answers.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { toldOfFile } from "../../input/files/file-message.ts";
import { isThere, realPath } from "../../input/files/real-path.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Sketch } from "./sketch.ts";
import { sketchOf } from "./sketch-of.ts";
import { type Fitting, type Trial, tryKit } from "./try-kit.ts";

/** A kit that fits its book, and its folder that is still to be written. */
export interface Begun extends Fitting {
  /** Writes the folder, complete or not at all. */
  readonly write: () => void;
}

/**
 * Begins a kit in the project `base`.
 * @throws BuildError where its folder is there already, or nothing fits; KitError for a picture that cannot be read
 */
export function beginKit(base: string, answers: Answers, trial: Trial = {}): Begun {
  const kits = contentPath("kits");
  checkFree(base, kits, answers.slug);
  const sketch = sketchOf(answers.picture, base);
  const fitting = tryKit(answers, sketch, trial);
  const files = [...sketch.files, { name: "index.md", bytes: fitting.text }];
  return { ...fitting, write: () => writeFolder(base, kits, answers.slug, files) };
}

/** @throws BuildError where something of this name is there */
function checkFree(base: string, kits: string, slug: string): void {
  if (isThere(base, `${kits}/${slug}`)) throw new BuildError(say.newExists({ kit: slug }));
}

/** Writes a folder aside, where nobody looks for kits, and then gives it its name: so there is never half of one. */
function writeFolder(base: string, kits: string, slug: string, files: Sketch["files"]): void {
  mkdirSync(join(base, kits), { recursive: true });
  const home = toldOfFile(() => realPath({ base, file: kits, kind: undefined }));
  const aside = join(home, `.new-${slug}`);
  rmSync(aside, { recursive: true, force: true });
  try {
    mkdirSync(aside);
    for (const { name, bytes } of files) writeFileSync(join(aside, name), bytes);
    checkFree(base, kits, slug);
    renameSync(aside, join(home, slug));
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    throw isTaken(error) ? new BuildError(say.newExists({ kit: slug })) : error;
  }
}

/** Somebody else made a folder of this name a moment before. */
function isTaken(error: unknown): boolean {
  return ["ENOTEMPTY", "EEXIST"].includes((error as NodeJS.ErrnoException).code ?? "");
}
