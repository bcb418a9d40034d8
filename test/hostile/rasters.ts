import { crc32 } from "node:zlib";
import sharp from "sharp";
import { type Files, type HostileCase, KIT, PAGE } from "./sound.ts";

/** Photographs and scans in the place of a picture: none, or broken, or made to exhaust the tracer. */

const SVG_PICTURE = /picture:\n(?: {2}.*\n)+/;

/** Two hills and a moon in the tones of three levels. */
const SOUND = sharp(
  Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="270" viewBox="0 0 100 90"><rect width="100" height="90" fill="#999"/><circle cx="62" cy="32" r="20" fill="#fff"/><path d="M0 90V66Q26 44 54 64T100 58V90Z"/></svg>',
  ),
);
const PNG = await SOUND.clone().png().toBuffer();
const JPEG = await SOUND.clone().jpeg().toBuffer();

/** Pixels that follow no rule, the same each time. */
function noise(count: number): Buffer {
  let state = 7;
  return Buffer.from(
    Array.from({ length: count }, () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return state >>> 24;
    }),
  );
}

/** A PNG that says of itself that it has other sides. */
function saying(width: number, height: number): Uint8Array {
  const bytes = Buffer.from(PNG);
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}

function withRaster(bytes: string | Uint8Array, more: string): Files {
  const page = PAGE.replace(SVG_PICTURE, `picture:\n  file: moon.png\n  ${more}\n`);
  return { [`${KIT}/index.md`]: page, [`${KIT}/moon.svg`]: undefined, [`${KIT}/moon.png`]: bytes };
}

function told(name: string, bytes: string | Uint8Array, says: RegExp, more = "trace: tones"): HostileCase {
  return { name: `a raster picture: ${name}`, files: withRaster(bytes, more), expect: "told", says };
}

function built(name: string, bytes: Uint8Array, more = "trace: tones"): HostileCase {
  return { name: `a raster picture: ${name}`, files: withRaster(bytes, more), expect: "built" };
}

export const RASTERS: readonly HostileCase[] = [
  built("a PNG", PNG),
  built("a JPEG named .png", JPEG),
  told("an SVG named .png", '<svg xmlns="http://www.w3.org/2000/svg"/>', /an SVG drawing/),
  told("words named .png", "The moon.\n", /a file of another kind/),
  told("empty", "", /an empty file/),
  told("half a PNG", PNG.subarray(0, PNG.length / 2), /cannot be read: /),
  told("half a JPEG", JPEG.subarray(0, JPEG.length / 2), /cannot be read: /),
  told("1 gigapixel in some kilobytes", saying(50_000, 20_000), /has 1000 megapixels/),
  told("sides beyond every library", saying(2_000_000_000, 2_000_000_000), /cannot be read: /),
  told(
    "one tone",
    await sharp({ create: { width: 90, height: 90, channels: 3, background: "#456" } })
      .png()
      .toBuffer(),
    /a single tone/,
  ),
  told("one limit for three levels", PNG, /1 limit/, "trace: tones\n  limits: [90]"),
  told(
    "noise",
    await sharp(noise(1200 * 1200), { raw: { width: 1200, height: 1200, channels: 1 } })
      .png()
      .toBuffer(),
    /times as long as its edge|parts/,
    "trace: tones\n  least: 0.1",
  ),
];
