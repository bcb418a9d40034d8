import { mkdirSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import type { Photo } from "../../core/kit/kit.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { PHOTO_KINDS } from "../../input/files/named-files.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import { PHOTO_WIDTHS, photoFile } from "../../output/views/photo-files.ts";
import * as say from "../../words/messages.ts";
import type { SitePhoto } from "./site-photos.ts";

/** Ground of a link preview, and the least of it around the picture, pixels. */
const GROUND = { margin: 40, background: "#17130f" } as const;

/**
 * Writes photos of the project `base` below `output`: turned upright, without metadata, as WebP and JPEG in several widths.
 * @throws KitError naming those that cannot be read
 */
export async function writePhotos(base: string, output: string, photos: readonly SitePhoto[]): Promise<void> {
  const messages: KitMessage[] = [];
  for (const one of photos) {
    const original = await readFile(join(base, one.source, one.photo.file));
    try {
      await sharp(original).stats();
    } catch (error) {
      messages.push(unreadable(one, String((error as Error).message)));
      continue;
    }
    const target = join(output, one.target);
    mkdirSync(join(target, "photos"), { recursive: true });
    for (const width of PHOTO_WIDTHS) await writePhoto(original, target, one.photo, width);
  }
  if (messages.length > 0) throw new KitError(messages);
}

async function writePhoto(original: Buffer, target: string, photo: Photo, width: number): Promise<void> {
  const image = sharp(original).rotate().resize({ width, withoutEnlargement: true });
  await image
    .clone()
    .webp({ quality: 78 })
    .toFile(join(target, photoFile(photo, width, "webp")));
  await image
    .clone()
    .jpeg({ quality: 80, mozjpeg: true })
    .toFile(join(target, photoFile(photo, width, "jpg")));
}

function unreadable({ photo, at }: SitePhoto, fault: string): KitMessage {
  return {
    ...at,
    given: say.frontPhotoUnreadable({ file: photo.file, fault }),
    allowed: say.frontPhotoKinds({ kinds: PHOTO_KINDS.join(", ") }),
    remedy: say.frontSavePhotoAgain(),
  };
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
