import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { drawFront, writeCoverImage, writeSmallImages } from "../../../src/build/images/front-images.ts";

const folder = mkdtempSync(join(tmpdir(), "front-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A drawing of a size in mm: creamy paper on its upper half, other shapes over it. */
function drawing(width: number, height: number, shapes = ""): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"><path d="M0 0H${width}V${height / 2}H0Z" fill="#f4e6c8"/>${shapes}</svg>`;
}

async function pixelsOf(file: string) {
  const { data, info } = await sharp(file).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { ...info, at: (x: number, y: number) => [0, 1, 2].map((part) => data[(y * info.width + x) * 3 + part]!) };
}

function near(shown: readonly number[], wanted: readonly number[]): void {
  wanted.forEach((part, i) => {
    expect(Math.abs(shown[i]! - part)).toBeLessThan(5);
  });
}

describe("a cover", () => {
  /** Creases of leaves that stand 0.12 mm apart over 100 mm, a pixel of the cover: the beat of such lines is what the eye sees. */
  const creases = Array.from({ length: 833 }, (_, i) => `M${(i * 0.12).toFixed(2)} 0h.04v50h-.04z`).join("");

  it("keeps its finest lines in one tone over ten pixels, on the paper's wash", async () => {
    const file = join(folder, "cover.jpg");
    await writeCoverImage(await drawFront(drawing(100, 100, `<path d="${creases}" fill="#c8b48c"/>`)), file);
    const { width, height, at } = await pixelsOf(file);
    expect([width, height]).toEqual([840, 840]);
    // By hand, red: a third of the way is #c8, the rest #f4: 244 − 44 / 3 is 229; the full contrast is 44.
    const tones = Array.from({ length: 770 }, (_, i) => at(i + 35, 210)[0]!);
    expect(Math.abs(tones.reduce((sum, tone) => sum + tone, 0) / tones.length - 229.3)).toBeLessThan(3);
    const means = Array.from(
      { length: 77 },
      (_, i) => tones.slice(10 * i, 10 * i + 10).reduce((a, b) => a + b, 0) / 10,
    );
    expect(Math.max(...means) - Math.min(...means)).toBeLessThan(44 / 5);
    // #efe9dc is 239, 233, 220.
    near(at(420, 630), [239, 233, 220]);
  });
});

describe.each([
  ["upright", 100, 200, 280],
  ["wider than a link preview", 300, 100, 1680],
])("the small pictures of a piece that is %s", (_, wide, high, smallWidth) => {
  it("are as high as a card shows them, and stand in the middle of a link preview's dark ground", async () => {
    const [small, social] = [join(folder, `${wide}.webp`), join(folder, `${wide}.jpg`)];
    const halo = `<circle cx="${wide / 2}" cy="${high}" r="${high / 2}" fill="#ffb84d" fill-opacity=".06"/>`;
    await writeSmallImages(await drawFront(drawing(wide, high, halo)), { small, social });
    const { width, height, hasAlpha } = await sharp(small).metadata();
    expect([width, height, hasAlpha]).toEqual([smallWidth, 560, true]);
    const preview = await pixelsOf(social);
    expect([preview.width, preview.height]).toEqual([1200, 630]);
    near(preview.at(600, 17), [0x17, 0x13, 0x0f]);
    near(preview.at(600, 613), [0x17, 0x13, 0x0f]);
    near(preview.at(600, 290), [0xf4, 0xe6, 0xc8]);
    // A faint halo stays faint: six hundredths of #ffb84d on the ground.
    near(preview.at(600, 470), [37, 29, 19]);
  });
});
