import sharp from "sharp";
import { swapsSides, upright } from "./orientation.ts";
import type { Decoded } from "./pixels.ts";
import { MOST_PIXELS, WORKING_SIDE } from "./raster-bounds.ts";

/** How a PNG begins. */
const PNG = 0x89504e47;

/**
 * Decodes a picture: the first frame, through its colour profile to sRGB, reduced to the working size, upright.
 * A file that is damaged or ends early is a fault, also where part of it could be shown.
 */
export async function decode(bytes: Uint8Array): Promise<Decoded> {
  const stated = pngPixels(bytes);
  if (stated > MOST_PIXELS) return { fault: { kind: "pixels", count: stated } };
  try {
    const { width, height, orientation = 1, pages = 1 } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > MOST_PIXELS) return { fault: { kind: "pixels", count: width * height } };
    const { data, info } = await sharp(bytes, { limitInputPixels: MOST_PIXELS })
      // Reduced before it is turned, so that no more than rows of the large one are ever held. This kernel overshoots nowhere.
      .resize({
        width: WORKING_SIDE,
        height: WORKING_SIDE,
        fit: "inside",
        withoutEnlargement: true,
        kernel: "linear",
      })
      .toColourspace("srgb")
      .ensureAlpha()
      .raw({ depth: "uchar" })
      .toBuffer({ resolveWithObject: true });
    const stored = { width: info.width, height: info.height, data: new Uint8Array(data) };
    const saved = swapsSides(orientation) ? { width: height, height: width } : { width, height };
    return { pixels: { ...upright(stored, orientation), saved, frames: pages } };
  } catch (error) {
    return { fault: { kind: "undecoded", words: faultWords(error) } };
  }
}

/** What a PNG states (third edition, 11.2.1): of sides beyond its own bounds the library complains on the terminal, too. */
function pngPixels(bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 20 || view.getUint32(0) !== PNG) return 0;
  const height = bytes.length < 24 ? 1 : Math.max(1, view.getUint32(20));
  return view.getUint32(16) * height;
}

/** The first line of what the decoder says, and not more of it than a message takes. */
export function faultWords(error: unknown): string {
  return String((error as Error).message)
    .trim()
    .split("\n", 1)[0]!
    .slice(0, 200);
}
