import { describe, expect, it } from "vitest";
import { readAsked } from "./asked.ts";
import { PART_NAMES } from "./line.ts";
import { LINES } from "./lines.ts";

describe("readAsked(args)", () => {
  it("measures every part where none is named, else those that are", () => {
    expect(readAsked([])).toEqual({ only: PART_NAMES, quick: false, full: false, accept: false });
    expect(readAsked(["--only", "page", "--only=bytes", "--accept"])).toMatchObject({
      only: ["page", "bytes"],
      accept: true,
    });
  });

  it("refuses parts that there are not, and to keep what was measured quickly", () => {
    expect(() => readAsked(["--only", "pages"])).toThrow(/no part pages; parts are functions, page/);
    expect(() => readAsked(["--quick", "--accept"])).toThrow(/--quick/);
  });
});

describe("LINES", () => {
  it("has a line for every part", () => {
    expect(new Set(Object.values(LINES).map(({ part }) => part))).toEqual(new Set(PART_NAMES));
  });
});
