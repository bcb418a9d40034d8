import { crc32 } from "node:zlib";
import { PNG } from "pngjs";
import sharp, { type Color } from "sharp";
import { describe, expect, it } from "vitest";
import { decode } from "../../../src/input/raster/decode.ts";
import type { Pixels } from "../../../src/input/raster/pixels.ts";
import { WORKING_SIDE } from "../../../src/input/raster/raster-bounds.ts";

async function pixelsOf(bytes: Buffer): Promise<Pixels> {
  const decoded = await decode(bytes);
  if ("fault" in decoded) throw new Error(JSON.stringify(decoded.fault));
  return decoded.pixels;
}

/** Red, green, blue and alpha of a pixel. */
function pixelAt({ data, width }: Pixels, x: number, y: number): number[] {
  return [...data.subarray(4 * (y * width + x), 4 * (y * width + x) + 4)];
}

/** 24 × 16 pixels of one colour. */
const plain = (background: Color, channels: 3 | 4 = 3) =>
  sharp({ create: { width: 24, height: 16, channels, background } });
const BRICK = { r: 200, g: 60, b: 40 };
const BRICK_PIXEL = [200, 60, 40, 255];

/** All four corners differ, so that each of the eight orientations shows. */
const CORNERS = await sharp(
  Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" width="32" height="16"><rect width="16" height="8" fill="#f00"/><rect x="16" width="16" height="8" fill="#0f0"/><rect y="8" width="16" height="8" fill="#00f"/><rect x="16" y="8" width="16" height="8" fill="#ff0"/></svg>',
  ),
)
  .png()
  .toBuffer();

describe("decode(bytes)", () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])("turns orientation %i upright, as libvips does", async (orientation) => {
    const tagged = await sharp(CORNERS).withMetadata({ orientation }).png().toBuffer();
    const theirs = await sharp(tagged).autoOrient().ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const ours = await pixelsOf(tagged);
    expect([ours.width, ours.height]).toEqual([theirs.info.width, theirs.info.height]);
    expect(ours.saved).toEqual({ width: theirs.info.width, height: theirs.info.height });
    expect(Buffer.compare(Buffer.from(ours.data), theirs.data)).toBe(0);
  });

  it.each(["jpeg", "webp"] as const)("turns a %s upright", async (format) => {
    const tagged = await sharp(CORNERS).withMetadata({ orientation: 6 }).toFormat(format, { quality: 100 }).toBuffer();
    const pixels = await pixelsOf(tagged);
    expect([pixels.width, pixels.height]).toEqual([16, 32]);
    // Turned clockwise, what was at the bottom left comes to the top left: blue.
    const [red, , blue] = pixelAt(pixels, 3, 3);
    expect(red).toBeLessThan(40);
    expect(blue).toBeGreaterThan(215);
  });

  it("goes through the colour profile", async () => {
    const tagged = await plain(BRICK).withIccProfile("p3").png().toBuffer();
    // An unrelated reader, which knows no profiles, sees other numbers in the file.
    expect([...PNG.sync.read(tagged).data.subarray(0, 3)]).not.toEqual([200, 60, 40]);
    const pixel = pixelAt(await pixelsOf(tagged), 5, 5);
    for (const [i, value] of BRICK_PIXEL.entries()) expect(Math.abs(pixel[i]! - value)).toBeLessThanOrEqual(2);
  });

  it("reads 16 bits, grey, and inks", async () => {
    const deep = await plain(BRICK).toColourspace("rgb16").png().toBuffer();
    expect(pixelAt(await pixelsOf(deep), 5, 5)).toEqual(BRICK_PIXEL);
    const grey = await plain({ r: 90, g: 90, b: 90 }).toColourspace("b-w").png().toBuffer();
    expect(pixelAt(await pixelsOf(grey), 5, 5)).toEqual([90, 90, 90, 255]);
    const deepGrey = await plain({ r: 90, g: 90, b: 90 }).toColourspace("grey16").png().toBuffer();
    expect(pixelAt(await pixelsOf(deepGrey), 5, 5)).toEqual([90, 90, 90, 255]);
    const inks = await plain({ r: 120, g: 100, b: 80 }).toColourspace("cmyk").jpeg({ quality: 100 }).toBuffer();
    // The way to inks and back is no exact one.
    const pixel = pixelAt(await pixelsOf(inks), 5, 5);
    for (const [i, value] of [120, 100, 80, 255].entries()) expect(Math.abs(pixel[i]! - value)).toBeLessThan(20);
  });

  it("keeps alpha, and colours apart from it", async () => {
    const half = await plain({ ...BRICK, alpha: 0.5 }, 4)
      .png()
      .toBuffer();
    expect(pixelAt(await pixelsOf(half), 5, 5)).toEqual([200, 60, 40, 128]);
  });

  it("takes the first frame of several", async () => {
    const frames = await Promise.all(["#ff0000", "#0000ff", "#00ff00"].map((one) => plain(one).png().toBuffer()));
    const moving = await sharp(frames, { join: { animated: true } })
      .webp({ lossless: true })
      .toBuffer();
    const pixels = await pixelsOf(moving);
    expect(pixels.frames).toBe(3);
    expect([pixels.width, pixels.height]).toEqual([24, 16]);
    expect(pixelAt(pixels, 5, 5)).toEqual([255, 0, 0, 255]);
  });

  it("reduces what is larger than the working size, and nothing else", async () => {
    const large = sharp({ create: { width: 6000, height: 3000, channels: 3, background: BRICK } });
    const { width, height, saved } = await pixelsOf(await large.png().toBuffer());
    expect([width, height]).toEqual([WORKING_SIDE, WORKING_SIDE / 2]);
    expect(saved).toEqual({ width: 6000, height: 3000 });
    expect((await pixelsOf(CORNERS)).saved).toEqual({ width: 32, height: 16 });
  });

  it("tells of what cannot be decoded", async () => {
    const jpeg = await sharp(CORNERS).resize(320).jpeg().toBuffer();
    for (const broken of [
      jpeg.subarray(0, jpeg.length / 2),
      jpeg.subarray(0, 3),
      Buffer.from("a gull"),
      Buffer.alloc(0),
    ])
      expect(await decode(broken)).toMatchObject({ fault: { kind: "undecoded" } });
  });

  it("does not begin on more than 100 megapixels", async () => {
    // A PNG's size stands in its first chunk, which ends with a checksum (PNG, third edition, 11.2.1).
    const bomb = Buffer.from(await plain(BRICK).png().toBuffer());
    bomb.writeUInt32BE(11_000, 16);
    bomb.writeUInt32BE(11_000, 20);
    bomb.writeUInt32BE(crc32(bomb.subarray(12, 29)), 29);
    expect(await decode(bomb)).toEqual({ fault: { kind: "pixels", count: 121_000_000 } });
    // An AVIF's stands behind the name of its box (ISO/IEC 23008-12, 6.5.3).
    const avif = Buffer.from(await plain(BRICK).avif({ effort: 0 }).toBuffer());
    avif.writeUInt32BE(2_000_000_000, avif.indexOf("ispe") + 8);
    expect(await decode(avif)).toEqual({ fault: { kind: "pixels", count: 32_000_000_000 } });
  });
});
