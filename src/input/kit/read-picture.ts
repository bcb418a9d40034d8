import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { KitError } from "../files/message.ts";
import { PictureError, readSvg } from "../svg/read-svg.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";

/** Reads an SVG file below the project `base`. `field` is what it is in its message. @throws KitError */
export function readPicture(base: string, file: string, field: string): SvgPicture {
  try {
    return readSvg(readFileSync(join(base, file), "utf8"));
  } catch (error) {
    if (!(error instanceof PictureError)) throw error;
    const advice = { allowed: say.frontPictureShapes(), remedy: say.frontChangeElement() };
    throw new KitError([{ file, line: error.line, column: undefined, field, given: error.message, ...advice }]);
  }
}
