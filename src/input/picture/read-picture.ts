import * as say from "../../words/messages.ts";
import { KitError } from "../files/message.ts";
import { letters } from "../lettering/letters.ts";
import { PictureError, readSvg } from "../svg/read-svg.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";

/** Reads the text of an SVG file. `field` is what it is in its message. @throws KitError */
export function readPicture(file: string, text: string, field: string): SvgPicture {
  try {
    return readSvg(text, { letters });
  } catch (error) {
    if (!(error instanceof PictureError)) throw error;
    const advice = { allowed: say.frontPictureShapes(), remedy: say.frontChangeElement() };
    throw new KitError(
      error.faults.map(({ line, message }) => ({ file, line, column: undefined, field, given: message, ...advice })),
    );
  }
}
