import sharp from "sharp";
import { FileError } from "../../input/files/file-error.ts";
import { fileAdvice } from "../../input/files/file-message.ts";
import type { KitMessage } from "../../input/files/message.ts";
import { checkPhotoKind, photoOfKit } from "../../input/files/named-files.ts";
import { PHOTO_ENDINGS } from "../../input/files/photo-kinds.ts";
import type { Advice } from "../../input/files/problem.ts";
import { readBytes } from "../../input/files/read-file.ts";
import type { SiteFile } from "../../input/files/site-file.ts";
import { faultWords } from "../../input/raster/decode.ts";
import { MOST_PIXELS } from "../../input/raster/raster-bounds.ts";
import * as say from "../../words/messages.ts";
import type { SitePhoto } from "../library/site-photos.ts";

const MEGA = 1_000_000;

/** What a photo cannot be published for. */
export class PhotoError extends Error {
  readonly advice: Advice;
  constructor(advice: Advice) {
    super(advice.given);
    this.advice = advice;
  }
}

/** Reads and decodes photos of the project `base` as a build will, one after the other: the messages about those that it would refuse. */
export async function checkPhotos(base: string, photos: readonly SitePhoto[]): Promise<KitMessage[]> {
  const messages: KitMessage[] = [];
  for (const { photo, page, at } of photos) {
    try {
      await decode(photo.file, await readPhoto(base, page, photo.file));
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      messages.push({ file: page, ...at, ...error.advice });
    }
  }
  return messages;
}

/**
 * The bytes of a photo that the index.md `page` names: they begin as those of a photo, with no more pixels than can be handled.
 * @throws PhotoError
 */
export async function readPhoto(base: string, page: string, name: string): Promise<Buffer> {
  const bytes = openPhoto(base, page, name);
  const { width, height } = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch((error: unknown) => {
      throw undecoded(name, error);
    });
  if (width * height > MOST_PIXELS) throw tooLarge(name, width * height);
  return bytes;
}

function openPhoto(base: string, page: string, name: string): Buffer {
  const folder = `${base}/${page.replace(/\/[^/]*$/, "")}`;
  try {
    const source: SiteFile = photoOfKit({ base, folder }, name, []);
    const bytes = readBytes(source);
    checkPhotoKind(source, bytes);
    return bytes;
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    const { given, ...advice } = fileAdvice(error);
    throw new PhotoError({ given: say.frontFileIs({ file: name, what: given }), ...advice });
  }
}

/** What the program that decodes photos says against one. */
export function undecoded(name: string, error: unknown): PhotoError {
  return new PhotoError({
    given: say.frontPhotoUnreadable({ file: name, fault: faultWords(error) }),
    allowed: say.frontPhotoKinds({ kinds: PHOTO_ENDINGS.join(", ") }),
    remedy: say.frontSavePhotoAgain(),
  });
}

/** Decodes all of a photo. @throws PhotoError where it is broken */
async function decode(name: string, bytes: Buffer): Promise<void> {
  try {
    await sharp(bytes, { limitInputPixels: MOST_PIXELS }).stats();
  } catch (error) {
    throw undecoded(name, error);
  }
}

function tooLarge(name: string, pixels: number): PhotoError {
  return new PhotoError({
    given: say.frontPhotoPixels({ file: name, megapixels: Math.ceil(pixels / MEGA) }),
    allowed: say.frontPhotoMostPixels({ most: MOST_PIXELS / MEGA }),
    remedy: say.fileDoSmaller({ kind: "photo" }),
  });
}
