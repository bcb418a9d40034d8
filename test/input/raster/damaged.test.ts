import sharp, { type Sharp } from "sharp";
import { describe, expect, it } from "vitest";
import { fc } from "../../seed.ts";
import { drawing, drawn, problemsOf, traced } from "./pictures.ts";

const picture = drawn(drawing('<circle cx="50" cy="50" r="30"/>'), 60);
const FILES = {
  png: await picture.clone().png().toBuffer(),
  jpeg: await picture.clone().jpeg().toBuffer(),
  webp: await picture.clone().webp().toBuffer(),
  avif: await picture.clone().avif({ effort: 0 }).toBuffer(),
};

/** A grey PNG with the value of each pixel. */
function grey(width: number, height: number, valueAt: (x: number, y: number) => number): Sharp {
  const values = Buffer.alloc(width * height);
  for (let at = 0; at < values.length; at += 1) values[at] = valueAt(at % width, Math.floor(at / width));
  return sharp(values, { raw: { width, height, channels: 1 } }).png();
}

const TONES = { trace: "tones", levels: [1, 2, 3, 4], background: 4 } as const;

describe("drawRaster(file, plan) of what is no picture", () => {
  it.each([
    ["an SVG", Buffer.from(drawing("")), '"gull.png": an SVG drawing'],
    ["a GIF", Buffer.from("GIF89a"), '"gull.png": a GIF image'],
    ["words", Buffer.from("A gull."), '"gull.png": a file of another kind'],
    ["nothing", Buffer.alloc(0), '"gull.png": a file of another kind'],
    ["half a JPEG", FILES.jpeg.subarray(0, FILES.jpeg.length / 2), /^"gull.png" cannot be read: VipsJpeg/],
    ["the first bytes of a PNG", FILES.png.subarray(0, 40), /^"gull.png" cannot be read: /],
  ])("tells of %s", (_, bytes, given) => {
    const [problem, ...others] = problemsOf(bytes);
    expect(others).toEqual([]);
    expect(problem!.at).toEqual(["picture", "file"]);
    expect(problem!.given).toMatch(given);
  });

  it.each(Object.entries(FILES))("tells of a damaged %s, or draws what is left of it, and nothing else", (_, bytes) => {
    const damage = fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 })), { maxLength: 6 });
    fc.assert(
      fc.property(damage, fc.integer({ min: 1, max: bytes.length }), fc.boolean(), (changes, length, isCut) => {
        const damaged = Buffer.from(bytes);
        for (const [at, value] of changes) damaged[at] = value;
        for (const { given, allowed, remedy } of problemsOf(isCut ? damaged.subarray(0, length) : damaged))
          for (const text of [given, allowed, remedy]) expect(text.length).toBeLessThan(400);
      }),
      { numRuns: 60 },
    );
  });
});

describe("drawRaster(file, plan) of what holds no levels", () => {
  it("tells of a picture of one tone, or of too few", async () => {
    const plain = await grey(40, 40, () => 90).toBuffer();
    expect(problemsOf(plain)).toMatchObject([{ given: '"gull.png" has a single tone' }]);
    const three = await grey(60, 60, (x) => 60 * Math.floor(x / 20)).toBuffer();
    expect(problemsOf(three, TONES)).toMatchObject([
      {
        at: ["picture", "file"],
        given: '"gull.png" has only 3 tones',
        allowed: "a picture of at least 4 tones, one for each level",
      },
    ]);
    expect(traced(three, { ...TONES, levels: [1, 2, 3], background: 3 }).shapes).toHaveLength(2);
  });

  it("tells of a picture that is transparent all over", async () => {
    const clear = await sharp({ create: { width: 40, height: 40, channels: 4, background: "#00000000" } })
      .png()
      .toBuffer();
    expect(problemsOf(clear, TONES)).toMatchObject([{ given: '"gull.png" is transparent all over' }]);
    expect(problemsOf(clear)).toMatchObject([{ given: 'no shape in "gull.png"' }]);
  });

  it("tells of limits that do not fit the levels", async () => {
    const ramp = await grey(64, 64, (x) => 4 * x).toBuffer();
    expect(problemsOf(ramp, { ...TONES, limits: [100] })).toMatchObject([
      { at: ["picture", "limits"], given: "1 limit", allowed: "3 limits, one between each two levels" },
    ]);
    expect(problemsOf(ramp, { ...TONES, limits: [10, 90, 90] })).toMatchObject([{ given: "90 after 90" }]);
    expect(problemsOf(ramp, { limits: [10, 20] })).toMatchObject([
      { given: "2 limits", allowed: "1 limit, between the two sides" },
    ]);
  });

  it("tells of nothing but specks, and of more of them than can be followed", async () => {
    const checks = await grey(600, 600, (x, y) => (((x >> 2) + (y >> 2)) % 2) * 255).toBuffer();
    expect(problemsOf(checks)).toMatchObject([
      {
        given: 'no shape in "gull.png"',
        allowed: "something that shows and is larger than a disc of 2 mm on the book",
      },
    ]);
    expect(problemsOf(checks, { least: 0.1 })).toMatchObject([{ given: /with [\d,]+ parts$/, remedy: /raise least/ }]);
    // Stripes of a pixel: about 1200 outlines of 1200 pixels, in an edge of 4800.
    const stripes = await grey(1200, 1200, (x) => (x % 2) * 255).toBuffer();
    expect(problemsOf(stripes, { least: 0.1 })).toMatchObject([
      { given: /^"gull.png" with outlines (299|300) times as long as its edge$/, allowed: /at most 208 times/ },
    ]);
  });
});
