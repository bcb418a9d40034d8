import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { kitOf } from "../pattern/made.ts";
import { lookedAt } from "./assessed.ts";
import { nineLeaves } from "./nine-leaves.ts";

const front = { view: "front", spine: "flat", foldStyle: "stepped" } as const;
const levels = (depths: readonly number[], background: number): Kit["levels"] =>
  depths.map((depth, k) => ({ name: `${k + 1}`, depth, line: undefined, background: k + 1 === background }));

const HIGH = { solve: "opening", pictureLeaves: "fill", height: 40 } as const;
const MANY = { leaves: 400, blockThickness: 40, lastPage: 700 };

const STRANGERS: Readonly<Record<string, Kit>> = {
  "two levels": nineLeaves([[20, 45]]),
  "twelve leaves": kitOf({ book: { leaves: 12, lastPage: 16 }, fit: { ...front, borderLeaves: [1, 1] } }),
  "six levels": kitOf({
    levels: levels([10, 18, 26, 34, 42, 50], 6),
    picture: { ...kitOf().picture, background: 6 },
    fit: front,
  }),
  "four hundred leaves": kitOf({ book: MANY, fit: { ...front, shape: HIGH } }),
  "an unfolded half": kitOf({ book: MANY, fit: { ...front, shape: { ...HIGH, pictureLeaves: 200 } } }),
  inches: kitOf({ units: "in", fit: { ...front, markStep: 25.4 / 32 } }),
  "right to left": kitOf({ book: { direction: "rtl" }, fit: front }),
  "a rounded spine": kitOf({ fit: { ...front, spine: "rounded" } }),
  "read walking round": kitOf(),
  "lost leaves": kitOf({ fit: { ...front, lostLeaves: [5, 6] as never } }),
  "springing flaps": kitOf({ fit: { ...front, flapBulk: 20 } }),
};

describe("makeabilityOf(patterned)", () => {
  it.each(Object.entries(STRANGERS))("looks at %s", (_, kit) => {
    const { areas, seen, place, troubles, pitch } = lookedAt(kit);
    expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(place.width * place.height, 3);
    expect(pitch).toBeGreaterThan(0);
    expect(seen === undefined).toBe(kit.fit.view === "along");
    for (const { level, wanted, kept, hidden, unreached, changed, share } of seen?.levels ?? []) {
      expect(wanted).toBeCloseTo(areas[level - 1]!, 6);
      expect(kept + hidden + unreached + changed).toBeCloseTo(wanted, 6);
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    for (const { trouble, ways } of troubles) {
      expect(trouble.figure).toBeGreaterThan(0);
      for (const { before, after } of ways) expect(after).toBeLessThan(before);
    }
  });

  it("tells flaps that spring open, and by how much", () => {
    const kit = STRANGERS["springing flaps"]!;
    const [found] = lookedAt(kit).troubles.filter(({ trouble }) => trouble.kind === "springs-open");
    const { opening, resting } = lookedAt(kit);
    expect(found!.trouble.figure).toBeCloseTo(resting - opening, 9);
  });
});
