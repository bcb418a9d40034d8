import { describe, expect, it } from "vitest";
import { turnByKey } from "../../../src/page/view3d/gestures.ts";
import { FRONT, moved, type Orbit, settled, unwound } from "../../../src/page/view3d/orbit.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

describe("moved(orbit, by)", () => {
  it("turns without end and keeps tilt and distance within bounds", () => {
    expect(moved(FRONT, { turn: 10 }).turn).toBe(10);
    expect(moved(FRONT, { tilt: 9 }).tilt).toBeCloseTo(radians(85), 9);
    expect(moved(FRONT, { tilt: -9 }).tilt).toBeCloseTo(radians(-30), 9);
    expect(moved(FRONT, { factor: 1e-3 }).distance).toBe(0.35);
    expect(moved(FRONT, { factor: 1e3 }).distance).toBe(1.8);
  });
});

describe("settled(orbit, wanted, milliseconds)", () => {
  it("comes nearer without passing, and arrives", () => {
    const wanted = moved(FRONT, { turn: 1 });
    const half = settled(FRONT, wanted, 70 * Math.log(2));
    expect(half.turn).toBeCloseTo(0.5, 9);
    let orbit: Orbit = FRONT;
    for (let i = 0; i < 60; i += 1) orbit = settled(orbit, wanted, 16);
    expect(orbit).toBe(wanted);
  });
});

describe("unwound(orbit)", () => {
  it("is the same view within half a turn", () => {
    expect(unwound({ ...FRONT, turn: radians(725) }).turn).toBeCloseTo(radians(5), 9);
  });
});

describe("turnByKey(key, turner, reset)", () => {
  function pressed(key: string): { orbit: Orbit; used: boolean; reset: boolean } {
    let orbit: Orbit = FRONT;
    let reset = false;
    const used = turnByKey(
      key,
      (change) => {
        orbit = change(orbit);
      },
      () => {
        reset = true;
      },
    );
    return { orbit, used, reset };
  }

  it("turns, tilts, zooms and resets, and leaves other keys alone", () => {
    expect(pressed("ArrowLeft").orbit.turn).toBeCloseTo(radians(10), 9);
    expect(pressed("ArrowRight").orbit.turn).toBeCloseTo(radians(-10), 9);
    expect(pressed("ArrowUp").orbit.tilt).toBeCloseTo(radians(10), 9);
    expect(pressed("ArrowDown").orbit.tilt).toBeCloseTo(radians(-10), 9);
    expect(pressed("+").orbit.distance).toBeLessThan(1);
    expect(pressed("-").orbit.distance).toBeGreaterThan(1);
    expect(pressed("0").reset).toBe(true);
    expect(pressed("Tab").used).toBe(false);
  });
});
