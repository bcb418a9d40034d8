import { writeFileSync } from "node:fs";
import sharp, { type Sharp } from "sharp";
import { SOCIAL } from "../../output/feeds/social-size.ts";

/** How large the front is drawn at most, pixels: on a cover of A4 or Letter these are more than 250 to the inch. */
const LARGEST = { width: 840, height: 1120 } as const;

/** Resolution at which a drawing has as many pixels as it states. */
const PLAIN_DENSITY = 72;

/** The front picture in pixels, with nothing behind it. */
export interface FrontPixels {
  readonly data: Buffer;
  readonly info: { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 };
}

/** Draws a front picture once for all the pictures that are made of it. */
export async function drawFront(svg: string): Promise<FrontPixels> {
  const [, width, height] = SIZE.exec(svg)!.map(Number) as [number, number, number];
  const scale = Math.min(LARGEST.width / width, LARGEST.height / height);
  const sized = svg.replace(SIZE, `width="${Math.round(width * scale)}" height="${Math.round(height * scale)}"`);
  return await sharp(Buffer.from(sized), { density: PLAIN_DENSITY })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
}

/** Width and height as a front picture states them. */
const SIZE = /width="([\d.]+)mm" height="([\d.]+)mm"/;

/** Pixels as a picture: colours as they are, although what resizes them tells of colours times opacity. */
function image({ data, info: { width, height, channels } }: FrontPixels): Sharp {
  return sharp(data, { raw: { width, height, channels } });
}

/** Writes a fifth fewer bytes of the same picture than plain JPEG; of a finer one nobody sees more at its size. */
const FINE = { mozjpeg: true, quality: 72 } as const;

/** The paper round a cover's picture, as the print style washes it. */
const WASH = "#efe9dc";

/** Writes the front for the cover of a packet. */
export async function writeCoverImage(front: FrontPixels, target: string): Promise<void> {
  writeFileSync(target, await image(front).flatten({ background: WASH }).jpeg(FINE).toBuffer());
}

/** A picture of the catalogue, as high as its card shows it on a fine screen, pixels. More effort takes several times as long and saves a tenth. */
const SMALL = { height: 560, quality: 62, effort: 2 } as const;

/** Ground of a link preview, and the least of it around the picture, pixels. */
const GROUND = { margin: 35, background: "#17130f" } as const;

/** Writes the front small for the catalogue, and on a dark ground for link previews. */
export async function writeSmallImages(front: FrontPixels, targets: { small: string; social: string }): Promise<void> {
  const { height, ...form } = SMALL;
  const { margin, background } = GROUND;
  const small = await image(front).resize({ height }).raw().toBuffer({ resolveWithObject: true });
  writeFileSync(targets.small, await image(small).webp(form).toBuffer());
  const room = { width: SOCIAL.width - 2 * margin, height: SOCIAL.height - 2 * margin };
  const social = image(small)
    .flatten({ background })
    .resize({ ...room, fit: "contain", background })
    .extend({ top: margin, bottom: margin, left: margin, right: margin, background });
  writeFileSync(targets.social, await social.jpeg(FINE).toBuffer());
}
