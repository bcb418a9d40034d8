import sharp, { type Sharp } from "sharp";
import { type Files, type HostileCase, KIT, picture, stating } from "./sound.ts";

/** Photos that are none, or broken, or too large. */

const flat = (width: number, height: number): Sharp =>
  sharp({ create: { width, height, channels: 3, background: "#456" }, limitInputPixels: false });

/** Grain keeps a photo from shrinking to a few bytes, so that half of it is half a photo. */
const grain = sharp({
  create: {
    width: 300,
    height: 200,
    channels: 3,
    background: "#456",
    noise: { type: "gaussian", mean: 120, sigma: 30 },
  },
});
const JPEG = await grain.clone().jpeg().toBuffer();
const PNG = await grain.clone().png().toBuffer();
const WEBP = await grain.clone().webp().toBuffer();
const AVIF = await flat(64, 48).avif().toBuffer();
const GIF = await flat(8, 8).gif().toBuffer();
const TIFF = await flat(8, 8).tiff().toBuffer();

function withPhoto(name: string, bytes: string | Uint8Array): Files {
  return { ...stating(`photos: [{ file: ${JSON.stringify(name)}, alt: The moon }]`), [`${KIT}/${name}`]: bytes };
}

function told(name: string, file: string, bytes: string | Uint8Array, says: RegExp): HostileCase {
  return { name: `a photo: ${name}`, files: withPhoto(file, bytes), expect: "told", says };
}

function built(name: string, file: string, bytes: Uint8Array): HostileCase {
  return { name: `a photo: ${name}`, files: withPhoto(file, bytes), expect: "built" };
}

const half = (bytes: Uint8Array): Uint8Array => bytes.subarray(0, Math.floor(bytes.length / 2));

export const PHOTOS: readonly HostileCase[] = [
  built("a JPEG", "moon.jpg", JPEG),
  built("a PNG", "moon.png", PNG),
  built("a WebP", "moon.webp", WEBP),
  built("an AVIF", "moon.avif", AVIF),
  built("a PNG named .jpg", "moon.jpg", PNG),
  told("an SVG named .jpg", "moon.jpg", picture(), /an SVG drawing/),
  told("words named .jpg", "moon.jpg", "The moon.\n", /a file of another kind/),
  told("empty", "moon.jpg", "", /an empty file/),
  told("a GIF named .jpg", "moon.jpg", GIF, /a GIF image/),
  told("a TIFF named .jpg", "moon.jpg", TIFF, /a TIFF image/),
  told("a PDF named .png", "moon.png", "%PDF-1.7\n", /a PDF document/),
  told("a JPEG named .gif", "moon.gif", JPEG, /"moon\.gif" is not a photo/),
  told("half a JPEG", "moon.jpg", half(JPEG), /cannot be read as a photo/),
  told("half a PNG", "moon.png", half(PNG), /cannot be read as a photo/),
  told("half a WebP", "moon.webp", half(WEBP), /cannot be read as a photo/),
  told("the first bytes of a JPEG", "moon.jpg", JPEG.subarray(0, 3), /cannot be read as a photo/),
  told("a PNG with a wrong byte", "moon.png", spoilt(PNG), /cannot be read as a photo/),
  told("121 megapixels in some kilobytes", "moon.png", await flat(11_000, 11_000).png().toBuffer(), /121 megapixels/),
  told("65 MB", "moon.jpg", new Uint8Array(64_500_000), /64\.5 MB/),
  told("above the kit folder", "../moon.jpg", JPEG, /outside its folder/),
  {
    name: "a photo: missing",
    files: stating("photos: [{ file: moon.jpg, alt: The moon }]"),
    expect: "told",
    says: /is not there/,
  },
];

function spoilt(bytes: Uint8Array): Uint8Array {
  const copy = Uint8Array.from(bytes);
  copy[Math.floor(copy.length / 2)]! ^= 0xff;
  return copy;
}
