import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { authorFailure } from "../../../src/words/findings/author-failure.ts";
import { fixtureFrontMatter, statedMadeKit } from "./kit-folders.ts";

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">
  <circle id="moon" cx="50" cy="50" r="40"/><rect id="sill" x="10" y="85" width="80" height="10"/></svg>`;

/** A kit of three levels, of which "sky" is the background. */
function stated(fit: object, more: object = {}): Kit {
  const { light, insert, ...matter } = fixtureFrontMatter("harbour-moon");
  return statedMadeKit(
    {
      ...matter,
      gauge: undefined,
      picture: { file: "picture.svg", levels: { moon: ["#moon"], sill: ["#sill"] } },
      levels: [
        { name: "moon", depth: 10 },
        { name: "sky", depth: 20, background: true },
        { name: "sill", depth: 30 },
      ],
      fit: { ...matter.fit, foldStyle: "corner", ...fit },
      ...more,
    },
    SVG,
  );
}

function messageOf(make: () => unknown) {
  try {
    make();
  } catch (error) {
    if (error instanceof KitError) return error.messages[0];
    throw error;
  }
  throw new Error("it is taken");
}

describe("fit.corner", () => {
  it.each([
    [{}, { levels: [1], empty: "line", dropped: [] }],
    [{ corner: { levels: ["sill"], empty: "half" } }, { levels: [1, 3], empty: "half", dropped: [] }],
    [{ corner: { levels: ["sill", "moon", "sill"] } }, { levels: [1, 3], empty: "line", dropped: [] }],
    [{ corner: { empty: "middle" } }, { levels: [1], empty: "middle", dropped: [] }],
  ])("%j is read as %j", (fit, corner) => {
    const kit = stated(fit);
    expect(kit.fit).toMatchObject({ foldStyle: "corner", corner });
    expect(fitAny(kit).fits).toBe(true);
  });

  it.each([
    ["a name of no level", { levels: ["moon", "well"] }, "fit.corner.levels[2]", /given "well"; .*moon, sky, sill/],
    [
      "the background",
      { levels: ["sky"] },
      "fit.corner.levels[1]",
      /"sky", which is the background; .*moon, sill; .*take it off/,
    ],
    ["another way to fold", { empty: "twice" }, "fit.corner.empty", /line, half, middle/],
    ["a key that there is none", { level: "sill" }, "fit.corner.level", /level/],
  ])("%s is told at its field", (_, corner, field, told) => {
    const message = messageOf(() => stated({ corner }))!;
    expect(message.field).toBe(field);
    expect(`${message.given}; ${message.allowed}; ${message.remedy}`).toMatch(told);
  });

  it.each([
    ["light", { light: { diameter: 20, height: 20 } }],
    ["insert", { insert: { outline: "moon" } }],
  ])("refuses %s at its field, with what to do", (field, more) => {
    const kit = stated({}, more);
    const result = fitAny(kit);
    if (result.fits) throw new Error("it fits");
    const { path, remedy } = authorFailure(result.finding, kit);
    expect(path).toEqual([field]);
    expect(remedy).toContain(`take ${field} out`);
  });
});
