import sharp from "sharp";
import { BEGINNING, contentKind } from "../files/content-kind.ts";
import { swapsSides, upright } from "./orientation.ts";
import type { Decoded } from "./pixels.ts";
import { MOST_PIXELS, WORKING_SIDE } from "./raster-bounds.ts";

/**
 * Decodes a picture: the first frame, through its colour profile to sRGB, reduced to the working size, upright.
 * A file that is damaged or ends early is a fault, also where part of it could be shown.
 */
export async function decode(bytes: Uint8Array): Promise<Decoded> {
  const stated = avifPixels(bytes);
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

/** What an AVIF states first of all (ISO/IEC 23008-12, 6.5.3): of sides beyond its own bounds the library complains on the terminal, too. */
function avifPixels(bytes: Uint8Array): number {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.byteLength, BEGINNING));
  const at = head.indexOf("ispe");
  if (contentKind(head) !== "avif" || at < 0 || at + 16 > head.length) return 0;
  return Math.max(1, head.readUInt32BE(at + 8)) * Math.max(1, head.readUInt32BE(at + 12));
}

/** The first line of what the decoder says, and not more of it than a message takes. */
export function faultWords(error: unknown): string {
  return String((error as Error).message)
    .trim()
    .split("\n", 1)[0]!
    .slice(0, 200);
}
