import { describe, expect, it } from "vitest";
import { distanceTo } from "../../core/geometry/plane.ts";
import type { Changes } from "../../core/light/disc-kit.ts";
import { discMessage, isRefused } from "../../core/light/read-disc-kit.ts";
import { discWindow, frameOf, partOf } from "./window.ts";

/** A square plate with a hole; 0.65 mm to a unit of the picture. */
const plate = (well: string): string => `<rect id="rim" x="4" y="4" width="192" height="192"/>${well}`;

const window = (changes: Changes): Changes => ({
  light: false,
  ...changes,
  insert: { panel: "flat", ...changes.insert },
});

const HOLES: readonly (readonly [name: string, shapes: string, lip: number, greatest: number, why: RegExp])[] = [
  [
    "a small round hole",
    plate('<circle id="well" cx="100" cy="100" r="20"/>'),
    14,
    13,
    /a lip of 14 mm closes the hole up/,
  ],
  [
    "a low slot",
    plate('<rect id="well" x="40" y="90" width="120" height="16"/>'),
    6,
    5.2,
    /a lip of 6 mm closes the hole up/,
  ],
  [
    "a dumbbell",
    plate('<path id="well" d="M40 60H85V94H115V60H160V140H115V106H85V140H40Z"/>'),
    5,
    3.9,
    /a lip of 5 mm breaks the hole into pieces/,
  ],
];

// Source: closed form. A hole shrinks to nothing at its inner radius or half its height, and breaks at half its neck.
describe.each(HOLES)("a lip too large for %s", (_, shapes, lip, greatest, why) => {
  const message = discMessage(window({ shapes, insert: { lip } }));
  const named = Number(/at most ([\d.]+) mm/.exec(message.allowed)?.[1]);

  it("is refused with the greatest lip, at the field", () => {
    expect(message.field).toBe("insert.lip");
    expect(message.given).toMatch(why);
    expect(message.line).toBeGreaterThan(1);
    expect(named).toBeLessThanOrEqual(greatest);
    expect(named).toBeGreaterThan(greatest - 0.11);
  });

  it("gets a lip named that passes, and 0.2 mm more does not", () => {
    expect(isRefused(window({ shapes, insert: { lip: named } }))).toBe(false);
    expect(isRefused(window({ shapes, insert: { lip: named + 0.2 } }))).toBe(true);
  });
});

const NO_HINGE: readonly (readonly [name: string, shapes: string])[] = [
  ["a diamond", '<path id="rim" d="M100 5L195 100L100 195L5 100Z"/><circle id="well" cx="100" cy="100" r="30"/>'],
  [
    "a star with thin points",
    '<path id="rim" d="M5 100L80 80L100 5L120 80L195 100L120 120L100 195L80 120Z"/><circle id="well" cx="100" cy="100" r="12"/>',
  ],
];

describe.each(NO_HINGE)("%s", (_, shapes) => {
  it.each(["left", "right"] as const)("has no straight place for a hinge at its %s", (hinge) => {
    const message = discMessage(window({ shapes, insert: { hinge } }));
    expect(message.field).toBe("insert.hinge");
    expect(message.given).toContain(`at the ${hinge} of "rim"`);
    expect(message.remedy).toContain("hinge the other side");
  });
});

describe("a shape with one straight side", () => {
  const shapes =
    '<path id="rim" d="M180 20L195 20L195 180L180 180L5 100Z"/><circle id="well" cx="140" cy="100" r="25"/>';

  it("can be hinged there and not at its point", () => {
    expect(isRefused(window({ shapes, insert: { hinge: "right" } }))).toBe(false);
    expect(isRefused(window({ shapes, insert: { hinge: "left" } }))).toBe(true);
  });
});

/** A wide picture, 0.917 mm to a unit, in a wide hole: its well far off the middle. */
function aside(well: string): Changes {
  return {
    shapes: `<rect id="rim" x="4" y="4" width="192" height="112"/><path id="well" d="M${well}"/>`,
    viewBox: "0 0 200 120",
    fit: { height: 110 },
    light: { setback: 0, diameter: 24, height: 40, clearance: 5 },
  };
}

const LIGHTS: readonly (readonly [name: string, changes: Changes])[] = [
  ["in the middle", { light: { setback: 0 } }],
  ["in the middle, with much clearance", { light: { setback: 1, diameter: 30, clearance: 5 } }],
  ["far to the side", aside("150 20H192V100.4H150Z")],
  ["far to the other side, rtl", { ...aside("8 20H50V100.4H8Z"), book: { direction: "rtl" } }],
];

// The front curves away from the light to both sides, so the light comes nearer to it than its setback.
describe.each(LIGHTS)("a setback too small for a light %s", (_, changes) => {
  const wish: Changes = { ...changes, insert: { lip: 3 } };
  const message = discMessage(wish);

  it("is refused with how much to add", () => {
    expect(message.field).toBe("light.setback");
    expect(message.given).toMatch(/the light would stand -?[\d.]+ mm behind the closed window/);
    expect(message.remedy).toMatch(/raise the setback by [\d.]+ mm/);
  });

  it("gets a setback named that passes", () => {
    const more = Number(/by ([\d.]+) mm/.exec(message.remedy)![1]);
    const setback = (changes.light as { setback: number }).setback + more;
    expect(isRefused({ ...wish, light: { ...changes.light, setback } })).toBe(false);
    expect(isRefused({ ...wish, light: { ...changes.light, setback: setback - 0.5 - 0.01 } })).toBe(true);
  });
});

describe("insert", () => {
  it("names an existing level, and the message lists them", () => {
    const message = discMessage({ insert: { outline: "rmi" } });
    expect(message).toMatchObject({
      field: "insert.outline",
      given: 'given "rmi"',
      allowed: "a level: rim, wall, well",
    });
  });

  it("is refused where its level is wholly covered", () => {
    const shapes = '<circle id="rim" cx="100" cy="100" r="60"/><circle id="well" cx="100" cy="100" r="80"/>';
    const message = discMessage(window({ shapes }));
    expect(message).toMatchObject({
      field: "picture.levels.rim",
      given: "nothing of level “rim” shows: it lies behind <circle> #well (line 1)",
    });
  });

  it("is refused where its level has no shape at all", () => {
    expect(
      discMessage(window({ shapes: '<circle id="well" cx="100" cy="100" r="80"/><g id="rim"/>' })).given,
    ).toContain("rim");
  });

  it("follows the largest of several pieces", () => {
    const shapes =
      '<g id="rim"><rect x="5" y="5" width="150" height="190"/><rect x="170" y="20" width="20" height="30"/></g><circle id="well" cx="80" cy="100" r="50"/>';
    const frame = partOf(discWindow(window({ shapes })), "base frame");
    expect(frame.width).toBeCloseTo(150 * 0.65 + 6, 1);
    expect(frame.height).toBeCloseTo(190 * 0.65 + 6, 1);
  });

  it("keeps a narrow card at the lip's distance from both sides", () => {
    const pattern = discWindow(window({ shapes: plate('<rect id="well" x="12" y="12" width="176" height="176"/>') }));
    const { rim, window: hole } = frameOf(partOf(pattern, "base frame"));
    for (const point of hole) expect(distanceTo(point, [rim])).toBeGreaterThan(8 * 0.65 + 6 - 0.05);
  });
});
