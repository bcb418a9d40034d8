import { describe, expect, it } from "vitest";
import { BOUNDS } from "../../../../src/core/kit/bounds.ts";
import { asCutKit } from "../../../../src/core/kit/cut-kit.ts";
import { type Edit, editText } from "../../../../src/input/desk/edit.ts";
import type { DeskShape } from "../../../../src/input/desk/protocol.ts";
import { type KitText, kitText } from "../../../../src/input/kit/state-kit.ts";
import { depthBounds, depthEdit } from "../../../../src/page/desk/table/depth-edit.ts";
import { figureText, readFigure, steppedFigure } from "../../../../src/page/desk/table/figure-field.ts";
import { hasOwnLevel, levelEdits, shapeAt } from "../../../../src/page/desk/table/shape-levels.ts";
import { refitEdits, wayEdits } from "../../../../src/page/desk/table/way-edits.ts";
import { fixtureKit, fixtureText } from "../../../input/kit/kit-folders.ts";

const MOON = fixtureText("harbour-moon");
const kit = asCutKit(fixtureKit("harbour-moon"));
const data = stated(MOON);

function stated(text: string): KitText["data"] {
  return kitText("harbour-moon", "index.md", text).data;
}

/** What a text states after edits. */
function edited(edits: readonly Edit[] | undefined, text = MOON): KitText["data"] {
  return stated(editText(text, edits!)!);
}

/** A square shape of a file. */
function shape(id: string, level: number, [left, top, side]: readonly [number, number, number]): DeskShape {
  const [right, bottom] = [left + side, top + side];
  return {
    file: "moon.svg",
    selectors: [`#${id}`],
    name: `<path> #${id}`,
    line: 1,
    colour: undefined,
    rule: "nonzero",
    rings: [
      [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ],
    ],
    level,
  };
}

describe("depthEdit", () => {
  it("moves the gauge’s line that a level names, or the level’s own depth", () => {
    expect(edited([depthEdit({ stated: data }, 1, 27)]).gauge!.lines).toEqual([10, 18, 27, 34, 42]);
    const own = MOON.replace(
      "{ name: wall, line: 3, background: true }",
      "{ name: wall, depth: 26mm, background: true }",
    );
    expect(edited([depthEdit({ stated: stated(own) }, 1, 27)], own).levels[1]!.depth).toBe(27);
  });

  it("stays a step away from neighbouring levels and from neighbouring lines of the gauge", () => {
    expect(depthBounds({ kit, stated: data }, 1, 0.5)).toEqual({ least: 18.5, most: 33.5 });
    expect(depthBounds({ kit, stated: data }, 2, 0.5)).toEqual({ least: 34.5, most: 140 });
  });
});

describe("levelEdits", () => {
  const shapes = [shape("well", 3, [0, 0, 100]), shape("gull", 2, [10, 10, 20]), shape("rim", 1, [60, 60, 20])];

  it("picks a shape of a group by itself for its new level", () => {
    expect(edited(levelEdits(data, shapes, shapes[1]!, "rim")).picture.levels).toEqual({
      rim: ["#rim", "#gull"],
      wall: ["#wall"],
      well: ["#well"],
    });
  });

  it("takes a shape out where it stood, and a level without shapes with it", () => {
    expect(edited(levelEdits(data, shapes, shapes[0]!, "wall")).picture.levels).toEqual({
      rim: ["#rim"],
      wall: ["#wall", "#well"],
    });
  });

  it("writes all levels down where the file’s own names said them", () => {
    const named = MOON.replace(/ {2}levels:\n( {4}.*\n)+/, "");
    expect(stated(named).picture.levels).toBeUndefined();
    expect(edited(levelEdits(stated(named), shapes, shapes[1]!, "rim"), named).picture.levels).toEqual({
      rim: ["#rim", "#gull"],
      well: ["#well"],
    });
  });

  it("knows which shapes have a level of their own", () => {
    expect(hasOwnLevel(data, shapes[0]!)).toBe(true);
    expect(hasOwnLevel(data, { ...shapes[0]!, file: "other.svg" })).toBe(false);
    expect(hasOwnLevel(data, { ...shapes[0]!, selectors: [] })).toBe(false);
  });

  it("finds the uppermost shape at a place", () => {
    expect(shapeAt(shapes, 20, 20)?.name).toBe("<path> #gull");
    expect(shapeAt(shapes, 40, 40)?.name).toBe("<path> #well");
    expect(shapeAt(shapes, 120, 40)).toBeUndefined();
  });
});

describe("ways out as edits", () => {
  it("changes the keys that each change means", () => {
    expect(edited(wayEdits({ kit, stated: data }, { kind: "height", height: 143 })).fit.height).toBe(143);
    expect(edited(wayEdits({ kit, stated: data }, { kind: "borders", before: 3, after: 4 })).fit.borderLeaves).toEqual([
      3, 4,
    ]);
    expect(edited(refitEdits({ kit, stated: data }, { lightDiameter: 30, foldStyle: "single" }))).toMatchObject({
      light: { diameter: 30 },
      fit: { foldStyle: "single" },
    });
  });

  it("leaves the gauge as it is for other depths: a line that stands there is named, another depth is stated", () => {
    const { gauge, levels } = edited(wayEdits({ kit, stated: data }, { kind: "depths", depths: [18, 22, 34] }));
    expect(gauge!.lines).toEqual([10, 18, 26, 34, 42]);
    expect(levels.map(({ line, depth }) => line ?? depth)).toEqual([2, 22, 4]);
  });

  it("moves the picture where it would not lie on the leaf at its new height", () => {
    const { fit } = edited(wayEdits({ kit, stated: data }, { kind: "height", height: 200 }));
    expect(fit.height).toBe(200);
    expect(fit.head).toBe(8);
  });

  it("folds a level together with its neighbour: its shapes go over, and the ground with it", () => {
    const merged = edited(wayEdits({ kit, stated: data }, { kind: "merge-levels", level: 2, into: 1 }));
    expect(merged.levels.map(({ name, background }) => [name, background ?? false])).toEqual([
      ["rim", true],
      ["well", false],
    ]);
    expect(merged.picture.levels).toEqual({ rim: ["#rim", "#wall"], well: ["#well"] });
  });

  it("cannot smooth a drawing by a key", () => {
    expect(wayEdits({ kit, stated: data }, { kind: "simplify", tolerance: 0.8 })).toBeUndefined();
  });
});

describe("fields", () => {
  const height = { bounds: BOUNDS.pictureHeight, figure: 130, edits: () => [] };
  const leaves = { bounds: BOUNDS.leaves, figure: 204, edits: () => [] };

  it("are written and read in the kit’s units", () => {
    expect(figureText(height, "mm")).toBe("130 mm");
    expect(figureText({ ...height, figure: 127 }, "in")).toBe("5 in");
    expect(readFigure(height, "5 1/4", "in")).toEqual({ value: 133.35 });
    expect(readFigure(height, "12,5 cm", "mm")).toEqual({ value: 125 });
    expect(readFigure(leaves, "190", "mm")).toEqual({ value: 190 });
  });

  it("say what would be allowed in place of anything else", () => {
    expect(readFigure(height, "tall", "mm")).toEqual({ allowed: "a length like 216, 21.6 cm or 8 1/2 in" });
    expect(readFigure(height, "4", "mm")).toEqual({ allowed: "5\u00a0mm to 600\u00a0mm" });
    expect(readFigure(leaves, "12.5", "mm")).toEqual({ allowed: "a whole number, 4 to 3000" });
  });

  it("are stepped by the finest step of a ruler, with Shift by ten, and stay within their bounds", () => {
    expect(steppedFigure(height, 1, false, "mm")).toBe(130.5);
    expect(steppedFigure(height, -1, true, "mm")).toBe(125);
    expect(steppedFigure({ ...height, figure: 127 }, 1, false, "in")).toBeCloseTo(127 + 25.4 / 32, 4);
    expect(steppedFigure({ ...leaves, figure: 3000 }, 1, false, "mm")).toBe(3000);
  });
});
