import { describe, expect, it } from "vitest";
import type { Changes } from "../../core/light/disc-kit.ts";
import { discMessage, discPattern, isRefused } from "../../core/light/read-disc-kit.ts";

const WIDE = { diameter: 90, height: 45 };

/** The sizes that a refusal names: the widest of the wished height, the highest of the wished width. */
function namedSizes(text: string): { diameter?: number; height?: number } {
  const width = /one [\d.]+ mm tall may be ([\d.]+) mm wide/.exec(text);
  const height = /one [\d.]+ mm wide may be ([\d.]+) mm tall/.exec(text);
  return { ...(width ? { diameter: Number(width[1]) } : {}), ...(height ? { height: Number(height[1]) } : {}) };
}

const REFUSED: readonly (readonly [name: string, changes: Changes, why: RegExp])[] = [
  ["wider than its region", { light: WIDE }, /“well” is nowhere 92 mm wide over 45 mm of height/],
  ["higher than its region", { light: { height: 90 } }, /“well” is nowhere 40 mm wide over 90 mm of height/],
  [
    "in a region off the middle",
    {
      shapes: '<rect id="rim" x="5" y="5" width="190" height="190"/><circle id="well" cx="130" cy="90" r="40"/>',
      light: { diameter: 50 },
    },
    /nowhere 52 mm wide/,
  ],
  [
    "too near the gutter",
    { light: { diameter: 40, setback: 74 } },
    /leaf \d+ would keep -?[\d.]+ mm of paper at the gutter, and 15 mm/,
  ],
  [
    "too near the gutter, rtl",
    { book: { direction: "rtl" }, fit: { spine: "rounded" }, light: { diameter: 60, setback: 60 } },
    /at the gutter/,
  ],
  [
    "above the head",
    { fit: { head: 5 }, light: { diameter: 20, height: 70, floor: 60 } },
    /it would reach 11 mm above the head/,
  ],
];

describe.each(REFUSED)("a light %s", (_, changes, why) => {
  const message = discMessage(changes);
  const sizes = namedSizes(message.allowed);

  it("is refused with its own size and the reason", () => {
    expect(message.field).toBe("light");
    expect(message.given).toMatch(why);
    expect(Object.keys(sizes)).not.toEqual([]);
  });

  it("gets the largest size named: that one stands, 1 mm more does not", () => {
    for (const [key, size] of Object.entries(sizes)) {
      expect(isRefused({ ...changes, light: { ...changes.light, [key]: size } }), `${key} ${size}`).toBe(false);
      expect(isRefused({ ...changes, light: { ...changes.light, [key]: size + 1 } }), `${key} ${size + 1}`).toBe(true);
    }
  });
});

describe("the largest light", () => {
  const largest = discPattern().light.largest;

  it("is published to half a millimetre, and nothing half a millimetre larger stands", () => {
    for (const key of ["diameter", "height"] as const) {
      expect(largest[key] * 2).toBe(Math.round(largest[key] * 2));
      expect(isRefused({ light: { [key]: largest[key] } })).toBe(false);
      expect(isRefused({ light: { [key]: largest[key] + 0.5 } })).toBe(true);
    }
  });

  // Source: closed form. A disc of radius r holds a rectangle of width D + 2c and height h where (D + 2c)² + h² = 4r²; marks
  // of 0.5 mm may cost half a step at the foot.
  it("is the largest rectangle in the disc", () => {
    const radius = 45.5;
    const widest = Math.sqrt(4 * radius ** 2 - 45 ** 2) - 2;
    const highest = Math.sqrt(4 * radius ** 2 - 40 ** 2);
    expect(largest.diameter).toBeLessThanOrEqual(widest);
    expect(largest.diameter).toBeGreaterThan(widest - 1.5);
    expect(largest.height).toBeLessThanOrEqual(highest);
    expect(largest.height).toBeGreaterThan(highest - 1);
  });
});

describe("light", () => {
  it("stands in a level of the kit, and the message names them", () => {
    const message = discMessage({ light: { in: "wel" } });
    expect(message).toMatchObject({ field: "light.in", given: 'given "wel"', allowed: "a level: rim, wall, well" });
    expect(message.line).toBeGreaterThan(1);
  });

  it("stands in the deepest level where none is named", () => {
    const { light } = discPattern({ light: { in: undefined } });
    expect(light).toEqual(discPattern().light);
  });

  it("is refused where its given floor lies outside its region", () => {
    const message = discMessage({ light: { floor: 195 } });
    expect(message.given).toContain("“well” is not there at 195 mm from the head");
  });

  it("is refused with other words where neither a narrower nor a lower one would do", () => {
    const message = discMessage({ light: { diameter: 90, height: 100 } });
    expect(message.allowed).toBe('no light of this width or height can stand in "well"');
    expect(message.remedy).toContain("choose another region");
  });
});
