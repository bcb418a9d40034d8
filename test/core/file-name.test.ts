import { describe, expect, it } from "vitest";
import { fileName, fileNames } from "../../src/core/file-name.ts";

describe("fileName(name)", () => {
  it.each([
    ["base frame", "base-frame"],
    ["12 × 12 in", "12x12-in"],
    ["Lübeck, Ö", "lubeck-o"],
    ["½ sheet", "1-2-sheet"],
    ["--a--", "a"],
    ["карта", ""],
    ["m".repeat(300), "m".repeat(80)],
  ])("makes of %s %s", (name, file) => {
    expect(fileName(name)).toBe(file);
  });
});

describe("fileNames(names, other)", () => {
  it.each([
    [
      ["Ä", "Ö"],
      ["a", "o"],
    ],
    [
      ["Rim", "rim", "RIM"],
      ["rim", "rim-2", "rim-3"],
    ],
    [
      ["a", "a", "a-2"],
      ["a", "a-3", "a-2"],
    ],
    [
      ["карта", "лист", ""],
      ["other", "other-2", "other-3"],
    ],
    [
      ["m".repeat(300), "m".repeat(301)],
      ["m".repeat(80), `${"m".repeat(80)}-2`],
    ],
  ])("calls %j apart", (names, files) => {
    expect(fileNames(names, "other")).toEqual(files);
  });
});
