import { describe, expect, it } from "vitest";
import { countsOf } from "../../../src/core/plan/effort.ts";
import { stagesOf } from "../../../src/core/steps/stages.ts";
import { workOf } from "../../../src/core/steps/work.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../../output/feeds/made-kits.ts";

function stages(slug: (typeof FIXTURE_KITS)[number]) {
  const { kit, pattern } = fixtureView(slug);
  const work = workOf(kit, pattern, countsOf(pattern));
  return { work, stages: stagesOf(work) };
}

describe("stagesOf(work)", () => {
  it("puts the steps of a lit kit into six stages, in the order of the hands", () => {
    const told = stages("harbour-moon").stages.map(
      ({ id, steps }) => `${id}: ${steps.map((step) => step.id).join(" ")}`,
    );
    expect(told).toEqual([
      "prepare: check find gauge",
      "score: score",
      "fold: borderBefore fold borderAfter",
      "finish: notch tack",
      "window: cut hold frame glaze decorate hang close",
      "light: light",
    ]);
  });

  it("has a stage of its own for opening a book that gets no window", () => {
    expect(stages("little-gull").stages.at(-1)).toMatchObject({ id: "open", steps: [{ id: "hold" }] });
  });

  it.each(FIXTURE_KITS)("leaves no step out and has none twice: %s", (slug) => {
    const { work, stages: all } = stages(slug);
    const names = all.flatMap(({ steps }) => steps.map(({ id }) => id));
    expect(names.toSorted()).toEqual(work.map(({ id }) => id).toSorted());
  });
});
