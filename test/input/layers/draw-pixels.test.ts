import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { BOAT, LEVELS, madePicture, toldOf } from "./made-picture.ts";
import { overlap, ringRaster, svgRaster } from "./raster.ts";

const BOX = { width: 120, height: 90 };
const GROUND = { level: "well", rectangle: {} };

/** A boat on white, four pixels for each of its units. */
const photo = (svg = BOAT) =>
  sharp(Buffer.from(svg.replace("<svg ", '<svg width="400" height="240" ')))
    .flatten({ background: "#fff" })
    .png()
    .toBuffer();

describe("a photograph or a scan as a layer", () => {
  it("stands where an SVG with the same transforms has it", async () => {
    const layer = {
      level: "rim",
      file: "boat.png",
      trace: "silhouette",
      at: [50, 40],
      width: 60,
      turn: 30,
      mirror: true,
    };
    const { map } = madePicture(
      { ...BOX, layers: [{ ...layer, crop: "canvas", least: 0 }, GROUND] },
      { "boat.png": await photo() },
    );
    const painted = map.shapes.map(({ rings, rule, level }) => ({ rings, rule, on: level === 1 }));
    const ours = await ringRaster(painted, [0, 0, 120, 90], [600, 450]);
    const paths = BOAT.replace(/<\/?svg[^>]*>/g, "");
    const byHand = `<svg xmlns="http://www.w3.org/2000/svg" width="600" height="450" viewBox="0 0 120 90">
      <g transform="translate(50 40) rotate(30) scale(-0.6 0.6) translate(-60 -50)">${paths}</g></svg>`;
    expect(overlap(ours, await svgRaster(byHand, 600, 450))).toBeGreaterThan(0.98);
  });

  it("leaves out what is small on the book where it stands", async () => {
    // By hand: the dot is 8 units of 100 across; on a layer 60 mm wide of a box 90 mm tall, on a book 100 mm tall, 5.3 mm.
    const dotted = BOAT.replace("</svg>", '<circle cx="100" cy="30" r="4"/></svg>');
    const file = await photo(dotted);
    const ringsAt = (least: number) => {
      const layer = { level: "rim", file: "boat.png", trace: "silhouette", width: 60, least };
      return madePicture({ ...BOX, layers: [layer, GROUND] }, { "boat.png": file }).map.shapes[1]!.rings.length;
    };
    expect(ringsAt(5)).toBe(ringsAt(5.7) + 1);
  });

  it("goes over all levels by its tones", async () => {
    const bands = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 60"><rect width="30" height="60"/><rect x="30" width="30" height="60" fill="#888"/><rect x="60" width="30" height="60" fill="#eee"/></svg>`;
    const { map } = madePicture({ file: "bands.png", trace: "tones" }, { "bands.png": await photo(bands) });
    expect([...new Set(map.shapes.map(({ level }) => level))].sort()).toEqual([1, 2, 3]);
    expect([map.width, map.height, map.background]).toEqual([400, 240, 2]);
  });

  it.each<[string, object, object]>([
    ["tones over all levels", { file: "boat.png" }, { file: "boat.png", trace: "tones" }],
    [
      "a silhouette at a level that is stated",
      { ...BOX, layers: [{ level: "rim", file: "boat.png" }, GROUND] },
      { ...BOX, layers: [{ level: "rim", file: "boat.png", trace: "silhouette" }, GROUND] },
    ],
    [
      "colours that are stated",
      { ...BOX, layers: [{ levels: { rim: { fill: "#000" }, wall: { fill: "#fff" } }, file: "boat.png" }, GROUND] },
      {
        ...BOX,
        layers: [
          { levels: { rim: { fill: "#000" }, wall: { fill: "#fff" } }, file: "boat.png", trace: "colours" },
          GROUND,
        ],
      },
    ],
  ])("shows without a word on tracing %s", async (_, silent, stated) => {
    const grey = BOAT.replace('<path id="sail"', '<path id="sail" fill="#888"');
    const files = { "boat.png": await photo(grey) };
    expect(madePicture(silent, files).map).toEqual(madePicture(stated, files).map);
  });

  it.each<[string, object, RegExp]>([
    ["a level for tones", { level: "rim", file: "boat.png", trace: "tones" }, /\[1\]\.level: /],
    ["shapes for a silhouette", { levels: { rim: "#sail" }, file: "boat.png", trace: "silhouette" }, /\[1\]\.levels: /],
    ["colours without any", { level: "rim", file: "boat.png", trace: "colours" }, /\[1\]\.levels: not given/],
    ["a name for a colour", { levels: { rim: "red" }, file: "boat.png", trace: "colours" }, /\[1\]\.levels\.rim: /],
    [
      "colours for no level",
      { levels: { rimm: { fill: "#000" } }, file: "boat.png", trace: "colours" },
      /\[1\]\.levels\.rimm: /,
    ],
    [
      "names of shapes",
      { level: "rim", file: "boat.png", trace: "silhouette", names: "#sail" },
      /\[1\]\.names: "names"/,
    ],
    ["tracing of a drawing", { level: "rim", file: "boat.svg", trace: "silhouette" }, /\[1\]\.trace: "trace"/],
    ["tones to cut with", { ...GROUND, cut: [{ file: "boat.png", trace: "tones" }] }, /\[1\]\.cut\[1\]\.trace: /],
  ])("tells of %s", async (_, layer, told) => {
    const found = toldOf(
      { ...BOX, layers: [layer, GROUND, { ...GROUND, level: LEVELS[0]!.name }] },
      { "boat.png": await photo(), "boat.svg": BOAT },
    );
    expect(found).toEqual([expect.stringMatching(told)]);
  });
});
