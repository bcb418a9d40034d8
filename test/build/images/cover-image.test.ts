import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { expect, it } from "vitest";
import { writeCoverImage } from "../../../src/build/images/images.ts";

/** Creases of leaves that stand 0.12 mm apart over 100 mm, a pixel and a half of the cover: the beat of such lines is what the eye sees. */
const CREASES = Array.from({ length: 833 }, (_, i) => `M${(i * 0.12).toFixed(2)} 0h.04v50h-.04z`).join("");

it("draws a cover whose finest lines keep one tone over ten pixels, on the paper's wash", async () => {
  const folder = mkdtempSync(join(tmpdir(), "cover-"));
  const file = join(folder, "cover.jpg");
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><path d="M0 0H100V50H0Z" fill="#f4e6c8"/><path d="${CREASES}" fill="#c8b48c"/></svg>`;
  await writeCoverImage(svg, file);
  const { data, info } = await sharp(file).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  rmSync(folder, { recursive: true });
  expect([info.width, info.height]).toEqual([1200, 1200]);
  const row = (y: number) => Array.from({ length: 1100 }, (_, i) => data[(y * 1200 + i + 50) * 3]!);
  // By hand, red: a third of the way is #c8, the rest #f4: 244 − 44 / 3 is 229; the full contrast is 44.
  const tones = row(300);
  expect(Math.abs(tones.reduce((sum, tone) => sum + tone, 0) / tones.length - 229.3)).toBeLessThan(3);
  const means = Array.from({ length: 110 }, (_, i) => tones.slice(10 * i, 10 * i + 10).reduce((a, b) => a + b, 0) / 10);
  expect(Math.max(...means) - Math.min(...means)).toBeLessThan(44 / 5);
  // #efe9dc is 239, 233, 220.
  const at = (900 * 1200 + 600) * 3;
  [239, 233, 220].forEach((part, i) => {
    expect(Math.abs(data[at + i]! - part)).toBeLessThan(4);
  });
});
