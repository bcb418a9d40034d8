import { describe, expect, it } from "vitest";
import { svgLevels } from "../../../src/build/beginning/svg-levels.ts";
import { readSvg } from "../../../src/input/svg/read-svg.ts";

function levelsIn(markup: string) {
  return svgLevels(readSvg(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${markup}</svg>`), "picture");
}

const square = (more = ""): string => `<rect width="4" height="4" ${more}/>`;

describe("svgLevels(picture)", () => {
  it("takes the outermost names that tell several apart, the last painted in front", () => {
    const hull = `<g id="boat"><g id="hull">${square()}</g></g>`;
    expect(levelsIn(`<g id="frame"><g id="sea">${square()}${square()}</g>${hull}</g>`)).toEqual({
      fields: { levels: { boat: "boat", sea: "sea" } },
      names: ["boat", "sea"],
    });
  });

  it("takes colours where names tell nothing apart", () => {
    const red = square('fill="#f00" id="a1"');
    expect(levelsIn(`${red}${square('fill="blue"')}`)).toEqual({
      fields: { levels: { "fill 0000ff": { fill: "#0000ff" }, "fill ff0000": { fill: "#ff0000" } } },
      names: ["fill 0000ff", "fill ff0000"],
    });
  });

  it.each([
    ["one shape", square()],
    ["one colour without names", square() + square()],
    ["too many names of one colour", Array.from({ length: 6 }, (_, i) => square(`id="p${i}"`)).join("")],
  ])("is one level: %s", (_, markup) => {
    expect(levelsIn(markup)).toEqual({ fields: { level: "picture" }, names: ["picture"] });
  });
});
