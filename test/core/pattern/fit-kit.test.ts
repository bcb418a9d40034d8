import { describe, expect, it } from "vitest";
import { asCutKit } from "../../../src/core/kit/cut-kit.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import { fitKit } from "../../../src/core/pattern/fit-kit.ts";
import { madeKit } from "../kit/made-kit.ts";

const at = (height: number) =>
  asCutKit(madeKit({ fit: { borderLeaves: [10, 10], shape: { solve: "opening", pictureLeaves: "fill", height } } }));

describe("fitKit(kit)", () => {
  // The square is 0.6 of the picture, and strips under 3 mm are merged: of 40 mm it is 24 high, of 4 mm it is 2.4.
  it("is the pattern, or that no leaf would be cut", () => {
    expect(fitKit(at(40))).toEqual(computePattern(at(40)));
    expect(computePattern(at(4)).fits).toBe(true);
    expect(fitKit(at(4))).toEqual({ fits: false, finding: { kind: "picture-flat", height: 4, leastTab: 3 } });
  });

  it("is why there is none", () => {
    expect(fitKit(at(400))).toEqual(computePattern(at(400)));
  });
});
