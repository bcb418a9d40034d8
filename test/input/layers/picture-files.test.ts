import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { PictureFiles } from "../../../src/input/layers/draw-file.ts";
import { readPixels } from "../../../src/input/raster/read-pixels.ts";
import { inFolder } from "../kit/kit-folders.ts";

const NAMES = ["a.png", "b.png", "c.png", "d.png"];
const dot = await sharp({ create: { width: 4, height: 3, channels: 3, background: "#456" } })
  .png()
  .toBuffer();

function inKit<T>(use: (files: PictureFiles) => T): T {
  return inFolder((base) => {
    const folder = join(base, "kit");
    mkdirSync(folder);
    for (const name of NAMES) writeFileSync(join(folder, name), dot);
    return use(new PictureFiles({ base, folder }));
  });
}

describe("the raster files of a kit", () => {
  it("are read and decoded once, in however many layers they stand", () => {
    inKit((files) => {
      const first = files.bytes("a.png", ["picture", "layers", 0, "file"]);
      const again = files.bytes("a.png", ["picture", "layers", 1, "file"]);
      expect(again.bytes).toBe(first.bytes);
      expect(readPixels(again.bytes)).toBe(readPixels(first.bytes));
      expect(readPixels(first.bytes)).toMatchObject({ pixels: { width: 4, height: 3 } });
    });
  });

  it("are not all held: of four, the one that was used longest ago is read again", () => {
    inKit((files) => {
      const at = ["picture", "file"];
      const [a, b] = NAMES.map((name) => files.bytes(name, at).bytes);
      expect(files.bytes("b.png", at).bytes).toBe(b);
      expect(files.bytes("a.png", at).bytes).not.toBe(a);
    });
  });
});
