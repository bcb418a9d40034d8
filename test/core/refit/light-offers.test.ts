import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import type { OfferedChange } from "../../../src/core/refit/offer.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { LIGHT, litKit, WELL } from "../kit/made-kit.ts";
import { failureOf, patternOf } from "../pattern/computed.ts";

/** A well on one side, where the front is steep in a wide open book: a wide light comes nearer to the window than a narrow one. */
function sideWell(setback: number): Kit {
  const [rim, well] = WELL.shapes;
  const ring = [...well!.rings[0]!].map(([x, y]): [number, number] => [x < 50 ? 50 : 90, y]);
  const picture: LevelMap = { ...WELL, shapes: [rim!, { ...well!, rings: [ring] }] };
  const shape = { solve: "opening", pictureLeaves: "fill", height: 140 } as const;
  return litKit({ picture, light: { ...LIGHT, setback, diameter: 70 }, fit: { shape, head: undefined } });
}

const height = (mm: number): OfferedChange => ({ kind: "height", height: mm });

describe("a light near the window in offersFor(kit, refit)", () => {
  // By hand: the largest in the well is 0.4 × 140 less 2, 54 mm; its tenths in whole millimetres.
  const SHARES = [54, 48, 43, 37, 32, 27];

  // The further back it stands, the wider it may be; every tenth is the answer once.
  it.each([
    [2.3, 54],
    [2.1, 48],
    [2, 43],
    [1.8, 37],
    [1.7, 32],
    [1.55, 27],
  ])("is made smaller by tenths until it stands clear: %d mm back, %d wide", (setback, diameter) => {
    const kit = sideWell(setback);
    expect(offersFor(kit, {}).map((offer) => offer.says)).toEqual([[{ kind: "light-width", diameter }]]);
    patternOf(refitKit(kit, { lightDiameter: diameter }));
    for (const wider of SHARES.slice(0, SHARES.indexOf(diameter)))
      expect(failureOf(refitKit(kit, { lightDiameter: wider })).kind).toBe("light-near-window");
  });

  // By hand: a square on its corner, 56 mm across, is as much narrower as a light is high, and the light is 1 mm free.
  it("is made narrower or lower where either helps, and narrower where the picture is changed, too", () => {
    const [rim, well] = WELL.shapes;
    const diamond: [number, number][] = [
      [50, 15],
      [85, 50],
      [50, 85],
      [15, 50],
    ];
    const kit = litKit({ insert: undefined, picture: { ...WELL, shapes: [rim!, { ...well!, rings: [diamond] }] } });
    const says = (refit: Refit) => offersFor(kit, refit).map((offer) => offer.says);
    expect(says({ lightDiameter: 30, lightHeight: 40 })).toEqual([
      [{ kind: "light-width", diameter: 14 }],
      [{ kind: "light-height", height: 24 }],
    ]);
    expect(says({ leafHeight: 70, lightDiameter: 30, lightHeight: 24.5 })).toEqual([
      [height(54), { kind: "light-width", diameter: 10 }],
    ]);
  });

  it("is not offered below 5 mm", () => {
    const low = (diameter: number) =>
      litKit({
        insert: undefined,
        fit: { shape: { solve: "opening", pictureLeaves: "fill", height: 10 } },
        light: { ...LIGHT, diameter, height: 3 },
      });
    // By hand: a well of 7 mm takes 5; one of 6.3, in a picture of 9 mm, takes 4.
    expect(offersFor(low(20), {}).map(({ says }) => says)).toEqual([[{ kind: "light-width", diameter: 5 }]]);
    expect(
      offersFor(low(20), { height: 9 })
        .flatMap(({ says }) => says)
        .map(({ kind }) => kind),
    ).toEqual(["height"]);
  });

  it("is measured in sixteenths of an inch in inches", () => {
    const [offer] = offersFor(litKit({ units: "in" }), { lightDiameter: 70 });
    // By hand: 54 mm are 34.02 sixteenths.
    expect(offer!.refit.lightDiameter).toBeCloseTo((34 * 25.4) / 16, 9);
  });
});
