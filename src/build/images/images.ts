import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp, { type Sharp } from "sharp";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import { PHOTO_WIDTHS, photoFile } from "../../output/views/photo-files.ts";
import type { SitePhoto } from "../library/site-photos.ts";
import { PhotoError, readPhoto, undecoded } from "./photos.ts";

/** Ground of a link preview, and the least of it around the picture, pixels. */
const GROUND = { margin: 40, background: "#17130f" } as const;

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

/** A cover's picture: how large at most, in pixels, and the paper round it, as the print style washes it. */
const COVER = { width: 1200, height: 1600, background: "#efe9dc" } as const;

/** How many times larger a cover is drawn than it is kept, so that leaves as thin as hairs come out even. */
const OVERSAMPLE = 2;

/** Resolution at which a drawing is as wide as it is in CSS pixels. */
const PLAIN_DENSITY = 96;

/** A drawing larger than it is to be kept; `scale` says how many times its own size that is. */
async function oversampled(svg: string, scale: (own: { width: number; height: number }) => number): Promise<Sharp> {
  const drawing = Buffer.from(svg);
  const own = await sharp(drawing, { density: PLAIN_DENSITY }).metadata();
  return sharp(drawing, { density: PLAIN_DENSITY * OVERSAMPLE * scale(own), limitInputPixels: false });
}

/** Draws the front picture for the cover of a packet. */
export async function writeCoverImage(svg: string, target: string): Promise<void> {
  const drawn = await oversampled(svg, ({ width, height }) => Math.min(COVER.width / width, COVER.height / height));
  writeFileSync(
    target,
    await drawn
      .flatten({ background: COVER.background })
      .resize({ width: COVER.width, height: COVER.height, fit: "inside" })
      .jpeg({ quality: 88, chromaSubsampling: "4:4:4" })
      .toBuffer(),
  );
}

/** A picture of the catalogue: as high as its card shows it on a fine screen, pixels. */
const SMALL = { height: 560, quality: 62 } as const;

/** Draws the front picture small, for the catalogue. */
export async function writeSmallImage(svg: string, target: string): Promise<void> {
  const drawn = await oversampled(svg, ({ height }) => SMALL.height / height);
  writeFileSync(
    target,
    await drawn
      .resize({ height: SMALL.height })
      .webp({ quality: SMALL.quality, smartSubsample: true, effort: 6 })
      .toBuffer(),
  );
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
