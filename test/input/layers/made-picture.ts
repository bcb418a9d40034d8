import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Level } from "../../../src/core/kit/kit.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { fieldName } from "../../../src/input/files/schema-messages.ts";
import { PictureFiles } from "../../../src/input/layers/draw-file.ts";
import type { KitPicture } from "../../../src/input/layers/kit-levels.ts";
import { kitPicture } from "../../../src/input/layers/kit-picture.ts";
import { pictureSchema } from "../../../src/input/layers/schema.ts";
import { inFolder } from "../kit/kit-folders.ts";

/** Three levels from front to back; what nothing covers is the wall. */
export const LEVELS: readonly Level[] = [
  { name: "rim", depth: 10, line: 1, background: false },
  { name: "wall", depth: 20, line: 2, background: true },
  { name: "well", depth: 30, line: 3, background: false },
];

/** A drawing whose parts look otherwise when they are turned or mirrored: 100 by 60, its corner at 10,20. */
export const BOAT = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="10 20 100 60">
  <path id="hull" d="M14 50 H104 Q98 76 70 76 H36 Q20 70 14 50 Z"/>
  <path id="sail" d="M50 22 L84 46 H50 Z"/>
</svg>`;

/** The picture that a front matter states, with files beside it. @throws ProblemError, KitError */
export function madePicture(
  matter: object,
  files: Readonly<Record<string, string | Buffer>> = { "boat.svg": BOAT },
  levels: readonly Level[] = LEVELS,
): KitPicture {
  return inFolder((base) => {
    const folder = join(base, "kit");
    mkdirSync(folder);
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return kitPicture(new PictureFiles({ base, folder }), pictureSchema.parse(matter), { levels, tall: 100 });
  });
}

/** What is told of a picture that cannot be made: each field or line, and what was given. */
export function toldOf(matter: object, files?: Readonly<Record<string, string | Buffer>>): string[] {
  try {
    madePicture(matter, files);
    return [];
  } catch (error) {
    if (error instanceof KitError) return error.messages.map(({ file, line, given }) => `${file}:${line}: ${given}`);
    if (!(error instanceof ProblemError)) throw error;
    return error.problems.map(({ at, given }) => {
      return `${"line" in at ? `${at.file}:${at.line}` : fieldName(at)}: ${given}`;
    });
  }
}
