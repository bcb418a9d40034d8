import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { contentPath } from "../../input/files/content-folder.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Answers } from "./answers.ts";
import { type Sketch, sketchOf } from "./sketch.ts";
import { type Fitting, tryKit } from "./try-kit.ts";

/** A kit that fits its book, and its folder that is still to be written. */
export interface Begun extends Fitting {
  /** Writes the folder, complete or not at all. */
  readonly write: () => void;
}

/**
 * Begins a kit in the project `base`.
 * @throws BuildError where its folder is there already, or nothing fits; KitError for a picture that cannot be read
 */
export function beginKit(base: string, answers: Answers): Begun {
  const folder = join(base, contentPath("kits"), answers.slug);
  if (existsSync(folder)) throw new BuildError(say.newExists({ kit: answers.slug }));
  const sketch = sketchOf(answers.picture, base);
  const fitting = tryKit(answers, sketch);
  const files = [...sketch.files, { name: "index.md", bytes: fitting.text }];
  return { ...fitting, write: () => writeFolder(join(base, contentPath("kits")), folder, files) };
}

function writeFolder(home: string, folder: string, files: Sketch["files"]): void {
  mkdirSync(home, { recursive: true });
  mkdirSync(folder);
  try {
    for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes);
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
}
