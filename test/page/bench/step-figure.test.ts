import { describe, expect, it } from "vitest";
import { stepFigure } from "../../../src/page/bench/step-figure.ts";
import { madePlan } from "../../core/bench/made.ts";
import { litKit } from "../../core/kit/made-kit.ts";

describe("stepFigure(id, plan)", () => {
  const plan = madePlan(litKit());
  it.each(["check", "find", "gauge", "tack", "hold", "cut", "frame", "hang", "close", "light"] as const)(
    "draws the step %s",
    (id) => {
      expect(stepFigure(id, plan)).toMatch(/^<svg class="figure.*<\/svg>$/s);
    },
  );

  it.each(["score", "glaze", "borderBefore", "borderAfter"] as const)("has no drawing of %s", (id) => {
    expect(stepFigure(id, plan)).toBe("");
  });
});
