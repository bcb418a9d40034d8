import { describe, expect, it } from "vitest";
import { fixtureFrontMatter, readMadeKit } from "../kit/kit-folders.ts";
import { BOAT } from "./made-picture.ts";

const { picture: _, ...matter } = fixtureFrontMatter("harbour-moon");

/** The fixture’s kit with another picture, which may name the boat as picture.svg. */
const kitOf = (picture: object) => readMadeKit({ ...matter, picture }, BOAT);

describe("a kit with a picture of layers", () => {
  it("has a pattern with every level, and a window in the level that it follows", () => {
    const { kit, pattern } = kitOf({
      width: 120,
      height: 120,
      layers: [
        { level: "rim", ring: { width: 10 } },
        { level: "rim", file: "picture.svg", at: [60, 70], width: 60 },
        { level: "well", oval: {}, width: 100 },
      ],
    });
    expect([kit.picture.width, kit.picture.height]).toEqual([120, 120]);
    const levels = new Set(pattern.leaves.flatMap(({ spans }) => spans.map(({ level }) => level)));
    expect([...levels].sort()).toEqual([1, 2, 3]);
    expect(pattern.window).toBeDefined();
  });

  it("is stated in a place of the front matter, which messages name", () => {
    const layers = [
      { level: "rim", ring: { width: 10 } },
      { level: "well", oval: {}, wdth: 100 },
    ];
    expect(() => kitOf({ width: 120, height: 120, layers })).toThrow(
      expect.objectContaining({
        messages: [
          expect.objectContaining({
            field: "picture.layers[2].wdth",
            line: expect.any(Number),
            remedy: expect.stringContaining("width"),
          }),
        ],
      }),
    );
  });
});
