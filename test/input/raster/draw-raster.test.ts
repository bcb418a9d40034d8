import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { areaOf, drawing, drawn, problemsOf, traced } from "./pictures.ts";

describe("drawRaster(file, plan) of a silhouette", () => {
  const disc = '<circle cx="50" cy="50" r="30"/>';
  const DISC = Math.PI * 90 * 90;
  const part = (picture: ReturnType<typeof traced>): number => areaOf(picture.shapes[0]!.rings);

  it("takes the light side where that is nearer", async () => {
    const bytes = await drawn(drawing(disc), 300).png().toBuffer();
    expect(part(traced(bytes)) / DISC).toBeCloseTo(1, 2);
    expect(part(traced(bytes, { near: "light" })) / (90_000 - DISC)).toBeCloseTo(1, 2);
  });

  it("parts at the stated limit, which belongs to the dark side", async () => {
    const bytes = await drawn(drawing(`<rect width="50" height="100" fill="rgb(90,90,90)"/>`, "rgb(160,160,160)"), 200)
      .png()
      .toBuffer();
    for (const limit of [90, 159]) expect(part(traced(bytes, { limits: [limit] })) / 20_000).toBeCloseTo(1, 1);
    expect(part(traced(bytes, { limits: [160] }))).toBe(40_000);
    expect(problemsOf(bytes, { limits: [89] })).toMatchObject([
      { at: ["picture", "file"], given: 'no shape in "gull.png"' },
    ]);
  });

  it("goes by transparency where part of the picture is transparent, and no limit is stated", async () => {
    const two = drawing('<circle cx="50" cy="50" r="40" fill="#fff"/><circle cx="50" cy="50" r="30"/>', "none");
    const bytes = await drawn(two, 300).png().toBuffer();
    const { shapes, notes } = traced(bytes);
    expect(areaOf(shapes[0]!.rings) / (Math.PI * 120 * 120)).toBeCloseTo(1, 2);
    expect(notes.map(({ message }) => message)).toEqual([
      "transparency carries the shape; to go by lightness instead, state limits",
    ]);
    expect(part(traced(bytes, { limits: [127] })) / DISC).toBeCloseTo(1, 2);
    // What is transparent is never the subject, whatever colour it has there.
    expect(part(traced(bytes, { limits: [127], near: "light" })) / (Math.PI * (120 * 120 - 90 * 90))).toBeCloseTo(1, 2);
  });

  it("says which limit it found", async () => {
    const bytes = await drawn(drawing('<rect width="50" height="100" fill="rgb(40,40,40)"/>', "rgb(220,220,220)"), 200)
      .png()
      .toBuffer();
    // Half-way between the two tones.
    expect(traced(bytes).notes).toEqual([
      { line: undefined, message: "the lightness parts at 130; to move that, write limits: [130]" },
    ]);
  });
});

describe("drawRaster(file, plan) of tones", () => {
  /** Discs of 64, 128 and 192 on 0, later ones on top: the picture of scikit-image's test_multiotsu_output. */
  async function discs(): Promise<Buffer> {
    const grey = Buffer.alloc(100 * 100);
    for (const [centre, value] of [
      [25, 64],
      [50, 128],
      [75, 192],
    ] as const)
      for (let y = 0; y < 100; y += 1)
        for (let x = 0; x < 100; x += 1) if ((x - centre) ** 2 + (y - centre) ** 2 < 400) grey[100 * y + x] = value;
    return sharp(grey, { raw: { width: 100, height: 100, channels: 1 } })
      .png()
      .toBuffer();
  }

  it("parts levels by Otsu's limits, each layer with all that lies in front of it", async () => {
    const plan = { trace: "depth", levels: [1, 2, 3, 4], background: 4 } as const;
    const { shapes, notes } = traced(await discs(), plan);
    expect(shapes.map(({ level }) => level)).toEqual([3, 2, 1]);
    // Counts of pixels of the same picture, from the front: 1245, 1187 and 1187 of 10,000.
    const sums = [1245 + 1187 + 1187, 1245 + 1187, 1245];
    for (const [i, { rings }] of shapes.entries()) expect(areaOf(rings) / sums[i]!).toBeCloseTo(1, 1);
    expect(notes.map(({ message }) => message)).toEqual([
      "the lightness parts at 32, 96, and 160; to move them, write limits: [32, 96, 160]",
    ]);
  });

  it("takes dark for near, and light for near of a depth picture", async () => {
    const bytes = await discs();
    const of = (plan: object) =>
      traced(bytes, { levels: [1, 2], background: 2, limits: [100], ...plan }).shapes.map(({ rings }) =>
        Math.round(areaOf(rings) / 100),
      );
    expect(of({ trace: "tones" })).toEqual([76]);
    expect(of({ trace: "tones", near: "light" })).toEqual([24]);
    expect(of({ trace: "depth" })).toEqual([24]);
    expect(of({ trace: "depth", near: "dark" })).toEqual([76]);
  });

  it("leaves out a level that the limits leave nothing", async () => {
    const { shapes } = traced(await discs(), {
      trace: "depth",
      levels: [1, 2, 3, 4],
      background: 4,
      limits: [32, 96, 120],
    });
    expect(shapes.map(({ level }) => level)).toEqual([3, 1]);
  });

  it("draws the last level, too, where the background is another", async () => {
    const { shapes } = traced(await discs(), { trace: "tones", levels: [1, 2], background: 1, limits: [100] });
    expect(shapes.map(({ level, rings }) => [level, Math.round(areaOf(rings) / 100)])).toEqual([
      [2, 100],
      [1, 76],
    ]);
  });

  it("evens out the grain of a photograph", async () => {
    const half = drawn(drawing('<rect width="50" height="100" fill="#444"/>', "#bbb"), 800);
    const { data, info } = await half.removeAlpha().raw().toBuffer({ resolveWithObject: true });
    let seed = 1;
    for (let i = 0; i < data.length; i += 1) {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      data[i] = Math.max(0, Math.min(255, data[i]! + (seed >>> 24) / 2 - 64));
    }
    const bytes = await sharp(data, { raw: { width: info.width, height: info.height, channels: 3 } })
      .png()
      .toBuffer();
    const { shapes } = traced(bytes, { trace: "tones", levels: [1, 2], tolerance: 0.5 });
    expect(shapes[0]!.rings).toHaveLength(1);
    for (const [x] of shapes[0]!.rings[0]!) expect(Math.min(x, Math.abs(x - 400))).toBeLessThan(5);
  });
});
