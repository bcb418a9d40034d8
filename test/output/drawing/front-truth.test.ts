import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { frontPicture } from "../../../src/output/drawing/front/picture.ts";
import { FIXTURES, readKit } from "../../input/kit/kit-folders.ts";

/**
 * The drawn picture against the published leaves, seen by rays: every ray runs straight at the book (along −z) and meets what
 * stands foremost there. Own geometry: flat spine, left to right, as the leaves of a fan stand (closed form). A folded edge is
 * as thick as its room: body and flap fill the cell halfway to its neighbours; behind it the leaf's face runs to the spine.
 */

interface Hit {
  /** Level of the folded edge that the ray meets; undefined on a face or a leaf that is not folded. */
  readonly level: number | undefined;
  readonly z: number;
}

function castRay(pattern: Pattern, x: number, u: number): Hit | undefined {
  const { book, fit, levels } = pattern;
  let best: Hit | undefined;
  const meet = (hit: Hit): void => {
    if (!best || hit.z > best.z) best = hit;
  };
  for (let j = 0; j < book.leaves; j += 1) {
    const share = (j + 0.5) / book.leaves - 0.5;
    const angle = fit.opening * share;
    const root = book.blockThickness * share;
    const span = pattern.leaves.find((one) => one.leaf === j + 1)?.spans.find((one) => u >= one.from && u < one.to);
    const reach = book.leafWidth - (span ? levels[span.level - 1]!.depth : 0);
    const pitch = book.blockThickness / book.leaves + (reach * fit.opening * Math.cos(angle)) / book.leaves;
    const tip = root + reach * Math.sin(angle);
    if (Math.abs(x - tip) <= pitch / 2) meet({ level: span?.level, z: reach * Math.cos(angle) });
    const along = (x - root) / Math.sin(angle);
    if (along >= 0 && along <= reach) meet({ level: undefined, z: along * Math.cos(angle) });
  }
  return best;
}

/** Whether the drawn picture of Harbour Moon is rim (the proudest level) at a point of its 200 × 200 box. */
async function drawnRim(size: number): Promise<boolean[]> {
  const fine = size * 8;
  const svg = readFileSync(join(FIXTURES, "content/kits/harbour-moon/moon.svg"), "utf8").replace(
    "<svg ",
    '<svg shape-rendering="crispEdges" ',
  );
  const { data, info } = await sharp(Buffer.from(svg), { density: 576 })
    .resize(fine, fine, { fit: "fill", kernel: "nearest" })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number): number[] =>
    [0, 1, 2].map((channel) => data[(y * fine + x) * info.channels + channel]!);
  const rim = at(fine / 2, fine / 20);
  return Array.from({ length: size * size }, (_, i) => {
    const here = at((i % size) * 8 + 4, Math.floor(i / size) * 8 + 4);
    return here.reduce((sum, value, channel) => sum + Math.abs(value - rim[channel]!), 0) < 24;
  });
}

function overlap(a: readonly boolean[], b: readonly boolean[]): number {
  const both = a.filter((one, i) => one && b[i]).length;
  const either = a.filter((one, i) => one || b[i]).length;
  return both / either;
}

describe("the finished front of Harbour Moon, 180 picture leaves at its hold width", () => {
  const { kit, pattern } = readKit(join(FIXTURES, "content/kits/harbour-moon"), FIXTURES);
  const size = 200;
  const { fit } = pattern;
  const cast = Array.from({ length: size * size }, (_, i) => {
    const x = (((i % size) + 0.5) / size - 0.5) * fit.width;
    const u = fit.head + ((Math.floor(i / size) + 0.5) / size) * fit.height;
    return castRay(pattern, x, u)?.level === 1;
  });

  it("shows the rim in its true shape: intersection over union with the drawn picture at least 0.98", async () => {
    expect(pattern.fit.lastLeaf - pattern.fit.firstLeaf + 1).toBe(180);
    expect(overlap(cast, await drawnRim(size))).toBeGreaterThanOrEqual(0.98);
  });

  it("is what the front picture shows: the light tone of the rim stands where the rays meet it", async () => {
    const svg = frontPicture(
      { ...pattern, pocket: undefined, window: undefined },
      { slug: kit.slug, title: kit.title, mood: "day" },
    );
    const box = /viewBox="([-\d. ]+)"/.exec(svg)![1]!.split(" ").map(Number);
    const scale = 8;
    const { data, info } = await sharp(Buffer.from(svg))
      .resize(Math.round(box[2]! * scale), Math.round(box[3]! * scale), { fit: "fill" })
      .blur(3)
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const shown = Array.from({ length: size * size }, (_, i) => {
      const x = (((i % size) + 0.5) / size - 0.5) * fit.width;
      const u = fit.head + ((Math.floor(i / size) + 0.5) / size) * fit.height;
      const at = (Math.round((u - box[1]!) * scale) * info.width + Math.round((x - box[0]!) * scale)) * info.channels;
      return data[at + 2]! > 196;
    });
    expect(overlap(cast, shown)).toBeGreaterThanOrEqual(0.969);
  });

  it("would not be, were the leaves cut from equal slices of the picture", async () => {
    const drawn = await drawnRim(size);
    const slices = Array.from({ length: size * size }, (_, i) => {
      const x = (((i % size) + 0.5) / size - 0.5) * fit.width;
      const leaf = pattern.leaves.reduce(
        (best, one) => (one.patternPage !== null && Math.abs(one.x[0]! - x) < Math.abs(best.x[0]! - x) ? one : best),
        pattern.leaves.find((one) => one.patternPage !== null)!,
      );
      const column = Math.min(size - 1, Math.floor((((leaf.patternPage! + 1) / 2 - 0.5) / 180) * size));
      return drawn[Math.floor(i / size) * size + column]!;
    });
    expect(overlap(slices, drawn)).toBeLessThan(overlap(cast, drawn));
  });
});
