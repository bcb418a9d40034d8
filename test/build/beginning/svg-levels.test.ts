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
      grounded: false,
    });
  });

  it("takes colours where names tell nothing apart", () => {
    const red = square('fill="#f00" id="a1"');
    expect(levelsIn(`${red}${square('fill="blue"')}`)).toEqual({
      fields: { levels: { blue: { fill: "#0000ff" }, red: { fill: "#ff0000" } } },
      names: ["blue", "red"],
      grounded: false,
    });
  });

  it("counts colours that are called alike", () => {
    const { fields, names } = levelsIn(
      `${square('fill="#00f"')}${square('fill="#0020c0"')}${square('fill="#4060a0"')}`,
    );
    expect(names).toEqual(["blue", "blue 2", "blue 3"]);
    expect(fields.levels).toMatchObject({ blue: { fill: "#4060a0" }, "blue 3": { fill: "#0000ff" } });
  });

  it("takes for the ground what lies behind all and leaves nothing of the canvas free", () => {
    const frame = '<rect width="10" height="10" fill="white"/>';
    expect(levelsIn(`${frame}${square('fill="red"')}`)).toMatchObject({ names: ["red", "white"], grounded: true });
    expect(levelsIn(`${square('fill="red"')}${square('fill="white"')}`)).toMatchObject({ grounded: false });
  });

  it.each([
    ["one shape", square()],
    ["one colour without names", square() + square()],
    ["too many names of one colour", Array.from({ length: 6 }, (_, i) => square(`id="p${i}"`)).join("")],
  ])("is one level: %s", (_, markup) => {
    expect(levelsIn(markup)).toEqual({ fields: { level: "picture" }, names: ["picture"], grounded: false });
  });
});
