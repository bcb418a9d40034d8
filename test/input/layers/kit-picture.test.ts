import { describe, expect, it } from "vitest";
import { boxOf } from "../../../src/core/geometry/box.ts";
import { filesOfPicture } from "../../../src/input/layers/kit-picture.ts";
import { pictureSchema } from "../../../src/input/layers/schema.ts";
import { BOAT, LEVELS, madePicture, toldOf } from "./made-picture.ts";

const FRONT_AND_BACK = LEVELS.slice(0, 2);
const BOX = { width: 120, height: 90 };
const WELL = { level: "well", oval: {} };

const layered = (...layers: readonly object[]) => ({ ...BOX, layers });

describe("kitPicture(kit, matter, levels)", () => {
  it("takes a drawing as the whole picture, in its own units", () => {
    const { map } = madePicture({ file: "boat.svg", levels: { rim: ["#sail"], well: "#hull" } });
    expect([map.width, map.height, map.background]).toEqual([100, 60, 2]);
    expect(map.shapes.map(({ level }) => level)).toEqual([3, 1]);
  });

  it("scales a drawing to the side that is stated", () => {
    const { map } = madePicture({ file: "boat.svg", level: "rim", width: 50 }, { "boat.svg": BOAT }, FRONT_AND_BACK);
    expect([map.width, map.height]).toEqual([50, 30]);
    // By hand: the hull reaches from 14 to 104 of a box from 10 to 110.
    const { left, right } = boxOf(map.shapes[0]!.rings);
    expect(left).toBeCloseTo(2, 6);
    expect(right).toBeCloseTo(47, 6);
  });

  it("takes words as the whole picture, at the first level, in a box that they fill", () => {
    const { map } = madePicture({ text: "27 · 06", height: 40 }, {}, FRONT_AND_BACK);
    expect(map.height).toBeCloseTo(40, 9);
    expect(map.shapes.map(({ level }) => level)).toEqual([1]);
    const { left, top, right, bottom } = boxOf(map.shapes.flatMap(({ rings }) => rings));
    expect([left, top]).toEqual([0, 0]);
    expect([right, bottom]).toEqual([map.width, map.height]);
  });

  it("takes an outline as the whole picture", () => {
    const { map } = madePicture({ ring: { width: "10%" }, width: 80 }, {}, FRONT_AND_BACK);
    expect([map.width, map.height]).toEqual([80, 80]);
    expect(boxOf([map.shapes[0]!.rings[1]!]).left).toBeCloseTo(8, 9);
  });

  it("sets a line of words at each of several levels", () => {
    const { map } = madePicture({ text: "Lamp\nSea", levels: ["well", "rim"] }, {});
    expect(map.shapes.map(({ level }) => level)).toEqual([3, 1]);
  });

  it("fits words to the width of their layer", () => {
    const words = { level: "rim", text: ["Harbour", "Moon"], width: 100, at: [60, 30] };
    const { left, right, top, bottom } = boxOf(madePicture(layered(words, WELL)).map.shapes[1]!.rings);
    expect(left).toBeCloseTo(10, 6);
    expect(right).toBeCloseTo(110, 6);
    expect(top).toBeGreaterThan(0);
    expect(bottom).toBeLessThan(60);
  });

  it("tells of layers that show nowhere or reach out of the box", () => {
    const hidden = { level: "well", heart: {}, width: 10 };
    const over = { level: "well", oval: {}, at: [120, 45], width: 20 };
    const { notes } = madePicture(layered({ level: "rim", rectangle: {}, width: 60, height: 60 }, hidden, over));
    expect(notes).toEqual([
      expect.stringMatching(/^Layer 2 .*nowhere/),
      expect.stringMatching(/^Layer 3 .*reaches out/),
    ]);
  });

  it("reads a file once, and tells of it with its line", () => {
    const noted = BOAT.replace('id="sail"', 'id="sail" opacity="0.5"');
    const twice = ["rim", "well"].map((level, i) => ({ level, file: "boat.svg", at: [60, 30 + 30 * i], width: 40 }));
    const { notes } = madePicture(layered(...twice), { "boat.svg": noted });
    expect(new Set(notes)).toEqual(new Set([expect.stringMatching(/kit\/boat\.svg:3: .*opacity/)]));
  });
});

describe("kitPicture(kit, matter, levels) of what cannot be made", () => {
  it.each<[string, object, (string | RegExp)[]]>([
    ["no source", {}, [/^picture: no source/]],
    ["two sources", { text: "Moon", heart: {}, width: 50 }, [/^picture: text, heart in one/]],
    ["keys of another source", { heart: {}, font: "literata", width: 50 }, [/^picture\.font: "font"/]],
    ["a level for all beside layers", { level: "rim", ...layered(WELL) }, [/^picture\.level: "level"/]],
    ["layers without a box", { width: 50, layers: [WELL] }, [/^picture\.height: not given/]],
    ["an outline without a box", { heart: {} }, [/^picture\.width: not given/]],
    ["a layer without a level", layered({ heart: {} }, WELL), [/^picture\.layers\[1\]\.level: not given/]],
    ["an unknown level", layered({ heart: {}, level: "rimm" }), [/^picture\.layers\[1\]\.level: given "rimm"/]],
    ["level and levels", layered({ text: "a", level: "rim", levels: ["rim"] }), [/\[1\]\.levels: both/]],
    ["levels for other lines", layered({ text: ["a", "b"], levels: ["rim"] }), [/\[1\]\.levels: given rim/]],
    ["a list of levels for a file", layered({ file: "boat.svg", levels: ["rim"] }), [/\[1\]\.levels: a list/]],
    ["shapes for words", layered({ text: "a", levels: { rim: "#a" } }), [/\[1\]\.levels: a level’s name/]],
    [
      "a name of no shape",
      layered({ file: "boat.svg", level: "rim", names: ["#mast"] }),
      [/\[1\]\.names\[1\]: .*#mast/],
    ],
    ["an unknown level of shapes", layered({ file: "boat.svg", levels: { rimm: "#sail" } }), [/\[1\]\.levels\.rimm/]],
    [
      "join over several levels",
      layered({ file: "boat.svg", levels: { rim: "#sail", well: "#hull" }, join: [{ oval: {} }] }),
      [/\[1\]\.join/],
    ],
    ["a level that is drawn nowhere", layered({ level: "rim", oval: {} }), [/^levels\[3\]: .*well/]],
    [
      "a level that shows nowhere",
      layered({ level: "rim", rectangle: {} }, WELL),
      [/^levels\[3\]: .*well.*nothing shows/],
    ],
    [
      "several things at once",
      layered(
        { level: "rim", file: "gone.svg" },
        { level: "well", ring: { width: 50 }, width: 60 },
        { ...WELL, cut: [{ text: "月" }] },
        { level: "rim", file: "bad.svg" },
        { level: "well", file: "bad.svg" },
      ),
      [/\[1\]\.file: .*gone/, /\[2\]\.ring\.width/, /\[3\]\.cut\[1\]\.text: .*月/, /bad\.svg:1: /],
    ],
    [
      "a form that is wrong in several places",
      layered({ level: "rim" }, { ...WELL, cut: [{ oval: {}, text: "a" }] }),
      [/\[1\]: no source/, /\[2\]\.cut\[1\]: /],
    ],
  ])("%s", (_, matter, told) => {
    const found = toldOf(matter, { "boat.svg": BOAT, "bad.svg": "<svg" });
    expect(found).toHaveLength(told.length);
    for (const [i, one] of told.entries()) expect(found[i]).toMatch(one);
  });
});

describe("filesOfPicture(matter)", () => {
  it("names the files of all sources", () => {
    const matter = layered(
      { level: "rim", file: "boat.svg", join: [{ text: "a", font: "own.ttf" }] },
      { ...WELL, cut: [{ file: "moon.svg" }] },
    );
    expect(filesOfPicture(pictureSchema.parse(matter))).toEqual(["boat.svg", "own.ttf", "moon.svg"]);
  });
});
