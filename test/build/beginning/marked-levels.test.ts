import { describe, expect, it } from "vitest";
import { markedLevels } from "../../../src/build/beginning/marked-levels.ts";

const mark = (name: string, level: number) => ({ name, selector: name, level });

describe("markedLevels(marks)", () => {
  it("puts marks of a level together, under the name of the first, front to back, with the ground last", () => {
    expect(markedLevels([mark("sky", 0), mark("boat", 2), mark("sail", 1), mark("oar", 2)])).toEqual({
      fields: { levels: { sail: "sail", boat: ["boat", "oar"], sky: "sky" } },
      names: ["sail", "boat", "sky"],
      grounded: true,
    });
  });

  it("calls the ground after what lies furthest back", () => {
    expect(markedLevels([mark("sail", 1), mark("sun", 0), mark("sky", 0)])).toMatchObject({ names: ["sail", "sky"] });
  });

  it("leaves out levels without a mark, and has no ground of its own where nothing is put there", () => {
    expect(markedLevels([mark("boat", 5), mark("sail", 3)])).toMatchObject({
      names: ["sail", "boat"],
      grounded: false,
    });
  });
});
