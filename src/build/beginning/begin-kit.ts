import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Answers } from "./answers.ts";
import { sketchOf } from "./sketch.ts";
import { type Fitting, tryKit } from "./try-kit.ts";

/**
 * Makes a new kit's folder in the project `base`, complete, or nothing.
 * @throws BuildError where the folder is there already, or nothing fits; KitError for a picture that cannot be read
 */
export function beginKit(base: string, answers: Answers): Fitting {
  const folder = join(base, "content/kits", answers.slug);
  if (existsSync(folder)) throw new BuildError(say.newExists({ kit: answers.slug }));
  const sketch = sketchOf(answers.picture, base);
  const fitting = tryKit(answers, sketch);
  mkdirSync(join(base, "content/kits"), { recursive: true });
  mkdirSync(folder);
  try {
    for (const { name, bytes } of sketch.files) writeFileSync(join(folder, name), bytes);
    writeFileSync(join(folder, "index.md"), fitting.text);
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
  return fitting;
}
