import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { roundScript } from "../../../src/output/data/round-script.ts";
import { dataOf } from "../../page/view3d/made.ts";

/** An outline that is cut, and as the view has it: a corner that stands 0.02 mm out of a side is not seen. */
const outlines = (i: number): [number, number][][] => [
  [
    [i, 0],
    [i + 5, 0.02],
    [i + 10, 0],
    [i + 10, 8],
  ],
];
const seen = (i: number): [number, number][][] => [outlines(i)[0]!.filter(([, y]) => y !== 0.02)];

/** A pattern as it is published, by hand, with more than the view needs. */
const PUBLISHED = {
  schema: "leaflight/pattern/2",
  kit: "made",
  title: "Made",
  unit: "mm",
  book: {
    leafHeight: 120,
    leafWidth: 80,
    blockThickness: 6,
    leaves: 40,
    pageOneLeaf: 3,
    lastPage: 76,
    direction: "rtl",
    square: 3,
    boardThickness: 2,
  },
  levels: [
    { name: "square", depth: 10, line: 1 },
    { name: "wall", depth: 20, line: 2, background: true },
  ],
  fit: {
    firstLeaf: 5,
    lastLeaf: 36,
    opening: 0.6,
    spine: "flat",
    view: "front",
    head: 30,
    height: 40,
    stretch: 1.01,
    restingOpening: 0.2,
    markStep: 1,
  },
  leaves: [
    {
      leaf: 5,
      patternPage: 1,
      bookPage: 5,
      x: [-9, -8],
      spans: [
        { from: 0, to: 38, level: 2 },
        { from: 38, to: 120, level: 1 },
      ],
      cuts: [{ at: 38, depth: 20 }],
      tacks: [],
    },
  ],
  absorbed: [],
  lostLeaves: [7],
  light: {
    in: "wall",
    diameter: 20,
    height: 25,
    clearance: 1,
    floor: 60,
    centre: { x: 1, z: 55 },
    notches: [{ leaf: 5, from: 34, to: 60, depth: 30, remaining: 50 }],
  },
  insert: {
    hinge: "left",
    panel: "wrap",
    stringLength: 130,
    parts: (
      ["base-frame", "glazing", "door", "closure-tab", "decoration-guide", "holder", "largest-motif", "motif"] as const
    ).map((kind, i) => ({
      name: kind,
      kind,
      material: "card",
      outlines: outlines(i),
      scores: [[[0, i]]],
      width: 9,
      height: 9,
    })),
  },
  supplies: [],
};

describe("roundData(published)", () => {
  it("takes over what the view shows, and nothing else", () => {
    const part = (kind: string, i: number) => ({ kind, outlines: seen(i), scores: [[[0, i]]] });
    expect(dataOf(PUBLISHED)).toStrictEqual({
      kit: "made",
      title: "Made",
      book: {
        leafHeight: 120,
        leafWidth: 80,
        blockThickness: 6,
        leaves: 40,
        direction: "rtl",
        square: 3,
        boardThickness: 2,
      },
      levels: [
        { name: "square", depth: 10 },
        { name: "wall", depth: 20 },
      ],
      fit: {
        firstLeaf: 5,
        lastLeaf: 36,
        opening: 0.6,
        spine: "flat",
        view: "front",
        stretch: 1.01,
        restingOpening: 0.2,
      },
      leaves: [
        {
          leaf: 5,
          spans: [
            { from: 0, to: 38, level: 2 },
            { from: 38, to: 120, level: 1 },
          ],
        },
      ],
      light: {
        diameter: 20,
        height: 25,
        floor: 60,
        centre: { x: 1, z: 55 },
        notches: [{ leaf: 5, from: 34, to: 60, depth: 30 }],
      },
      insert: {
        hinge: "left",
        panel: "wrap",
        parts: [part("base-frame", 0), part("glazing", 1), part("door", 2), part("largest-motif", 6), part("motif", 7)],
      },
      lostLeaves: [7],
    });
  });

  it("takes the colour of card and the place of motifs where they are stated", () => {
    const card = { name: "teal", colour: "#3f6b70" };
    const [first, ...rest] = PUBLISHED.insert.parts;
    const parts = [{ ...first!, card }, ...rest.slice(0, 1), { ...rest.at(-1)!, seat: [3, 4] as const, spacers: 2 }];
    const { insert } = dataOf({ ...PUBLISHED, insert: { ...PUBLISHED.insert, parts } });
    expect(insert!.parts.map((part) => [part.card, part.seat, part.spacers])).toEqual([
      [card, undefined, undefined],
      [undefined, undefined, undefined],
      [undefined, [3, 4], 2],
    ]);
  });

  it("leaves out light and window where the kit has none", () => {
    const { light: _light, insert: _insert, ...plain } = PUBLISHED;
    expect(Object.keys(dataOf(plain))).toEqual(["kit", "title", "book", "levels", "fit", "leaves", "lostLeaves"]);
  });
});

describe("roundScript(data)", () => {
  it("is a classic script that hands the data over, beside what is there already", () => {
    const data = dataOf(PUBLISHED);
    const page = { leaflightRound: { show: 1 } };
    runInNewContext(roundScript(data), page);
    expect(JSON.parse(JSON.stringify(page.leaflightRound))).toEqual({ show: 1, data });
  });
});
