import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { faceOf, layOutPicture } from "../../../src/core/pattern/face.ts";
import { type Folded, foldLeaves } from "../../../src/core/pattern/fold.ts";
import { cellEdges, readingPositions, tip } from "../../oracle/fan.ts";
import { valueFrom } from "../findings/made.ts";
import { BANDS, bandsOf, fanFor, kitOf } from "./made.ts";

const fold = (kit: Kit): Folded => foldLeaves(kit, faceOf(kit, valueFrom(layOutPicture(kit))));

/** The levels of each leaf from head to tail. */
const levels = ({ leaves }: Folded): string[] => leaves.map(({ spans }) => spans.map(({ level }) => level).join(""));

describe("foldLeaves(kit, face)", () => {
  const bands = BANDS.map((level) => (level === 3 ? "3" : `3${level}3`));

  it("folds borders whole at the background and gives each picture leaf its band", () => {
    const folded = fold(kitOf());
    expect(levels(folded)).toEqual(["3", "3", ...bands, "3", "3"]);
    expect(folded.leaves[2]).toMatchObject({
      leaf: 3,
      patternPage: 1,
      spans: [
        { from: 0, to: 50, level: 3 },
        { from: 50, to: 150, level: 1 },
        { from: 150, to: 200, level: 3 },
      ],
      cuts: [
        { at: 50, depth: 60 },
        { at: 150, depth: 60 },
      ],
    });
    expect(folded.leaves[0]).toMatchObject({
      leaf: 1,
      patternPage: null,
      cuts: [],
      spans: [{ from: 0, to: 200, level: 3 }],
    });
    expect(folded.leaves.map(({ patternPage }) => patternPage)).toEqual([
      null,
      null,
      ...Array.from({ length: 10 }, (_, i) => 2 * i + 1),
      null,
      null,
    ]);
  });

  it("begins at the picture's right side in a book read from right to left", () => {
    expect(levels(fold(kitOf({ book: { direction: "rtl" } }))).slice(2, 12)).toEqual(bands.toReversed());
  });

  it("leaves out lost leaves, and what comes after the last border", () => {
    const shape = { solve: "nothing", pictureLeaves: 9, height: 100, opening: 1 } as const;
    const kit = kitOf({ fit: { shape, borderLeaves: [2, 1], lostLeaves: [leafNumber(5), leafNumber(6)] } });
    expect(fold(kit).leaves.map(({ leaf }) => leaf)).toEqual([1, 2, 3, 4, 7, 8, 9, 10, 11, 12]);
  });

  it("lists what is merged by its leaf", () => {
    // The strip of level 1 is 2 mm high, less than the least tab of 3 mm.
    const strip = {
      level: 1,
      rule: "nonzero" as const,
      rings: [
        [
          [3, 4],
          [5, 4],
          [5, 4.2],
          [3, 4.2],
        ],
      ] as const,
    };
    const picture = {
      ...bandsOf([2, 2, 2, 2, 2, 2, 2, 2, 2, 2]),
      shapes: [...bandsOf([2, 2, 2, 2, 2, 2, 2, 2, 2, 2]).shapes, strip],
    };
    const { merged } = fold(kitOf({ picture }));
    expect(merged).toEqual([6, 7].map((leaf) => ({ leaf, from: 90, to: 92, level: 1, into: 2 })));
  });

  it("states where each tip of a leaf is seen", () => {
    const kit = kitOf();
    const fan = fanFor(kit);
    for (const { leaf, x } of fold(kit).leaves)
      expect(x).toEqual([20, 40, 60].map((depth) => expect.closeTo(tip(fan, leaf, depth).x, 9)));
  });

  // By the definition: seen from the front a deeper tip stands nearer the middle, and the leaf shows the proudest level whose
  // own tip lies on a part of at most that level. Worked out with the oracle's fan.
  it.each(["ltr", "rtl"] as const)("looks at the picture where each level's own tip is seen, %s", (direction) => {
    const shape = { solve: "nothing", pictureLeaves: "fill", height: 100, opening: 2 } as const;
    const pattern = [1, 3, 2, 1, 3, 3, 2, 3, 1, 2, 1, 2, 3, 1, 1, 2, 3, 2, 1, 3];
    const kit = kitOf({
      book: { direction },
      fit: { view: "front", shape },
      picture: { ...bandsOf(pattern), height: 20 },
    });
    const fan = fanFor(kit, 2);
    const positions = readingPositions(fan, 3, 12, 20, "front");
    const edges = cellEdges(positions);
    const [left, right] = [edges[0]!, edges.at(-1)!];
    const seen = (leaf: number, depth: number): number => {
      const share = (tip(fan, leaf, depth).x - left) / (right - left);
      return pattern[Math.floor(share * 20)] ?? 3;
    };
    const shown = (leaf: number): number => (seen(leaf, 20) <= 1 ? 1 : seen(leaf, 40) <= 2 ? 2 : 3);
    const expected = Array.from({ length: 10 }, (_, i) => shown(i + 3)).map((level) =>
      level === 3 ? "3" : `3${level}3`,
    );
    expect(new Set(expected).size).toBe(3);
    // The picture is drawn half as high as its box.
    const folded = fold(kit).leaves.slice(2, 12);
    expect(folded.map(({ spans }) => spans.map(({ level }) => level).join(""))).toEqual(expected);
    for (const { spans } of folded) if (spans.length > 1) expect(spans[1]).toMatchObject({ from: 50, to: 100 });
  });
});
