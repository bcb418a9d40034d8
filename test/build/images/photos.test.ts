import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { checkPhotos } from "../../../src/build/images/photos.ts";
import { writePhotos } from "../../../src/build/images/write-photos.ts";
import { listedPhotos } from "../../../src/build/library/site-photos.ts";
import { KitError } from "../../../src/input/files/message.ts";

const PAGE = "content/kits/moon/index.md";

let base: string;
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-photos-"));
  mkdirSync(join(base, "content/kits/moon/night"), { recursive: true });
});
afterEach(() => rmSync(base, { recursive: true, force: true }));

function put(name: string, bytes: Uint8Array): void {
  writeFileSync(join(base, "content/kits/moon", name), bytes);
}

const flat = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: "#456" }, limitInputPixels: false })
    .png()
    .toBuffer();
/** The photos of a kit whose front matter names these files. */
const photosOf = (...files: string[]) =>
  listedPhotos({
    kit: { slug: "moon", photos: files.map((file) => ({ file, alt: file })) } as never,
    file: PAGE,
    placeOf: (path: readonly PropertyKey[]) => ({ line: 10 + Number(path[1]), column: 3 }),
  });

describe("checkPhotos(base, photos)", () => {
  it("says nothing about whole photos", async () => {
    put("moon.png", await flat(30, 20));
    expect(await checkPhotos(base, photosOf("moon.png"))).toEqual([]);
  });

  it("tells each that a build would refuse with its place, and in megapixels what is too large", async () => {
    const whole = await flat(300, 200);
    put("half.png", whole.subarray(0, whole.length / 2));
    put("large.png", await flat(12_000, 10_000));
    const messages = await checkPhotos(base, photosOf("half.png", "large.png", "none.png"));
    expect(messages).toMatchObject([
      {
        file: PAGE,
        line: 10,
        column: 3,
        field: "photos[1].file",
        given: expect.stringMatching(/^"half\.png" cannot be read/),
      },
      {
        line: 11,
        field: "photos[2].file",
        given: '"large.png" has 120 megapixels',
        allowed: "a photo of at most 100 megapixels",
      },
      { line: 12, field: "photos[3].file", given: '"none.png": the file is not there' },
    ]);
  });
});

describe("writePhotos(base, output, photos)", () => {
  it("keeps photos of one name apart, without what cameras write into them", async () => {
    const source = sharp(await flat(600, 40)).withExif({ IFD0: { Copyright: "a camera" } });
    put("moon.jpg", await source.clone().jpeg().toBuffer());
    put("night/moon.jpg", await source.clone().resize(500).jpeg().toBuffer());
    await writePhotos(base, join(base, "out"), photosOf("moon.jpg", "night/moon.jpg"));
    const widths = await Promise.all(
      ["moon-960.jpg", "moon-2-960.jpg", "moon-2-480.webp"].map(async (name) => {
        const { width, exif } = await sharp(join(base, "out/kits/moon/photos", name)).metadata();
        return [width, exif];
      }),
    );
    expect(widths).toEqual([
      [600, undefined],
      [500, undefined],
      [480, undefined],
    ]);
  });

  it("names a photo that was spoilt since the check", async () => {
    put("moon.jpg", Buffer.from("ffd8ffe000104a46494600", "hex"));
    const written = writePhotos(base, join(base, "out"), photosOf("moon.jpg"));
    await expect(written).rejects.toThrow(KitError);
    await expect(written).rejects.toMatchObject({ messages: [{ file: PAGE, field: "photos[1].file" }] });
  });
});
