import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import type { Photo } from "../../core/kit/kit.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import { PHOTO_WIDTHS, photoFile } from "../../output/views/photo-files.ts";

/** Ground of a link preview, and the least of it around the picture, pixels. */
const GROUND = { margin: 40, background: "#17130f" } as const;

/** Writes a kit's photos, turned upright, without metadata, as WebP and JPEG in several widths. */
export async function writePhotos(source: string, target: string, photos: readonly Photo[]): Promise<void> {
  for (const photo of photos) {
    mkdirSync(join(target, "photos"), { recursive: true });
    for (const width of PHOTO_WIDTHS) {
      const image = sharp(join(source, photo.file)).rotate().resize({ width, withoutEnlargement: true });
      await image
        .clone()
        .webp({ quality: 78 })
        .toFile(join(target, photoFile(photo, width, "webp")));
      await image
        .clone()
        .jpeg({ quality: 80, mozjpeg: true })
        .toFile(join(target, photoFile(photo, width, "jpg")));
    }
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
