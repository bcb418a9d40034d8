import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { PHOTO_WIDTHS, photoFile } from "../../output/views/photo-files.ts";
import type { SitePhoto } from "../library/site-photos.ts";
import { PhotoError, readPhoto, undecoded } from "./photos.ts";

/**
 * Writes photos of the project `base` below `output`: turned upright, without metadata, as WebP and JPEG in several widths.
 * All were checked before; @throws KitError naming those that cannot be read now
 */
export async function writePhotos(base: string, output: string, photos: readonly SitePhoto[]): Promise<void> {
  const messages: KitMessage[] = [];
  for (const { photo, stem, page, target, at } of photos) {
    try {
      const pictures = await scaled(photo.file, await readPhoto(base, page, photo.file));
      const folder = join(output, target);
      mkdirSync(join(folder, stem, ".."), { recursive: true });
      for (const { width, kind, bytes } of pictures) writeFileSync(join(folder, photoFile(stem, width, kind)), bytes);
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      messages.push({ file: page, ...at, ...error.advice });
    }
  }
  if (messages.length > 0) throw new KitError(messages);
}

interface ScaledPhoto {
  readonly width: number;
  readonly kind: "webp" | "jpg";
  readonly bytes: Buffer;
}

/** @throws PhotoError where the photo cannot be decoded */
async function scaled(name: string, original: Buffer): Promise<ScaledPhoto[]> {
  try {
    const made: ScaledPhoto[] = [];
    for (const width of PHOTO_WIDTHS) {
      const image = sharp(original).rotate().resize({ width, withoutEnlargement: true });
      made.push({ width, kind: "webp", bytes: await image.clone().webp({ quality: 78 }).toBuffer() });
      made.push({ width, kind: "jpg", bytes: await image.clone().jpeg({ quality: 80, mozjpeg: true }).toBuffer() });
    }
    return made;
  } catch (error) {
    throw undecoded(name, error);
  }
}
