import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import type { Photo } from "../../core/kit/kit.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import { PHOTO_WIDTHS, photoFile, photoNames } from "../../output/views/photo-files.ts";
import { openPhoto, PhotoError, undecoded } from "./photos.ts";

/** Ground of a link preview, and the least of it around the picture, pixels. */
const GROUND = { margin: 40, background: "#17130f" } as const;

/**
 * Writes a kit's photos, turned upright, without metadata, as WebP and JPEG in several widths. `page` is the kit's index.md
 * below the project `base`. All were checked before; @throws KitError naming those that cannot be read now
 */
export async function writePhotos(
  { base, page, target }: { readonly base: string; readonly page: string; readonly target: string },
  photos: readonly Photo[],
): Promise<void> {
  const messages: KitMessage[] = [];
  const names = photoNames(photos);
  if (photos.length > 0) mkdirSync(join(target, "photos"), { recursive: true });
  for (const [i, { file }] of photos.entries()) {
    try {
      const pictures = await scaled(file, openPhoto(base, page, file));
      for (const { width, kind, bytes } of pictures)
        writeFileSync(join(target, photoFile(names[i]!, width, kind)), bytes);
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      const field = fieldName(["photos", i, "file"]);
      messages.push({ file: page, line: undefined, column: undefined, field, ...error.advice });
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

/** Draws the front picture large on a dark ground, for link previews. */
export async function writeSocialImage(svg: string, target: string): Promise<void> {
  const { width, height } = SOCIAL;
  const { margin, background } = GROUND;
  const picture = await sharp(Buffer.from(svg), { density: 150 })
    .resize({ width: width - 2 * margin, height: height - 2 * margin, fit: "inside" })
    .png()
    .toBuffer();
  const ground = sharp({ create: { width, height, channels: 3, background } });
  writeFileSync(
    target,
    await ground
      .composite([{ input: picture, gravity: "centre" }])
      .png({ palette: true, quality: 90 })
      .toBuffer(),
  );
}
