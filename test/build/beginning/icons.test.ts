import { describe, expect, it } from "vitest";
import { iconDrawing, nearIcons } from "../../../src/build/beginning/icons.ts";

describe("icons", () => {
  it("are SVG drawings by name", () => {
    expect(iconDrawing("anchor")).toMatch(/^<svg/);
  });

  it("of similar names are told where there is none of a name", () => {
    expect(() => iconDrawing("ancor")).toThrow(/anchor/);
    expect(() => iconDrawing("../../README")).toThrow(/There is no icon/);
    expect(nearIcons("lighthouse").length).toBe(8);
    expect(nearIcons("sail boat")[0]).toBe("sailboat");
  });
});
