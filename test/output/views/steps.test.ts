import { describe, expect, it } from "vitest";
import { countsOf, effortOf } from "../../../src/core/plan/effort.ts";
import { workOf } from "../../../src/core/steps/work.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { drawStep } from "../../../src/output/views/step-drawing.ts";
import { stepsOf } from "../../../src/output/views/steps.ts";
import { stepGist } from "../../../src/words/gists.ts";
import { stepPartName } from "../../../src/words/step-parts.ts";
import { toolName } from "../../../src/words/tools.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

describe("stepsOf(kit, pattern, counts, effort)", () => {
  it.each(FIXTURE_KITS)("%s: each step is there once, with words of its own for all that it needs", (slug) => {
    const { steps } = fixtureView(slug);
    const inInches = fixtureView(slug, { units: "in" }).steps;
    expect(inInches.map(({ id }) => id)).toEqual(steps.map(({ id }) => id));
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
    for (const { id, title, text, parts, tools } of [...steps, ...inInches]) {
      expect([title, text, stepGist(id)].every((words) => words.length > 5)).toBe(true);
      for (const name of [...parts.map(stepPartName), ...tools.map(toolName)]) expect(name).toMatch(/^\S.*\S$/);
    }
  });

  it.each(FIXTURE_KITS)("%s: says the hold width and the string in whole millimetres", (slug) => {
    const { steps, pattern } = fixtureView(slug, { units: "mm" });
    const text = (wanted: string): string => steps.find(({ id }) => id === wanted)?.text ?? "";
    expect(text("hold")).toContain(`are ${Math.round(pattern.fit.holdWidth)}\u00a0mm apart at the head edge`);
    const string = pattern.window?.stringLength;
    if (string !== undefined) expect(text("close")).toContain(`Tie ${Math.round(string)}\u00a0mm of string`);
  });

  it.each(FIXTURE_KITS)("%s: steps and supplies have no length that is finer than a ruler", (slug) => {
    const views = [fixtureView(slug, { units: "mm" }), fixtureView(slug, { units: "in" })];
    const told = views.flatMap(({ steps, supplies }) => [
      ...steps.map(({ text }) => text),
      ...supplies.map(({ note }) => note),
    ]);
    expect(told.join("\n").match(/\d[.,](?!5\b)\d*\u00a0mm|\/(?!2\b|4\b|8\b|16\b|32\b)\d+\u00a0in/g)).toBeNull();
  });

  it("names the knife for notches and window also where leaves are cut with scissors", () => {
    const { kit } = fixtureView("harbour-moon");
    const { steps } = fixtureView("harbour-moon", { fit: { ...kit.fit, cutWith: "scissors" } });
    const text = (wanted: string): string => steps.find(({ id }) => id === wanted)?.text ?? "";
    expect(text("fold")).toContain("short sharp scissors");
    expect(text("fold")).not.toContain("mat");
    for (const id of ["notch", "cut"]) expect(text(id).toLowerCase()).toContain("with the knife");
  });

  it("speaks of no cut where there is none", () => {
    const { kit, pattern } = fixtureView("little-gull");
    const whole = { ...pattern, leaves: pattern.leaves.map((leaf) => ({ ...leaf, cuts: [] })) };
    const counts = countsOf(whole);
    const work = workOf(kit, whole, counts);
    const steps = stepsOf(kit, whole, work, { counts, effort: effortOf(counts, kit.rates) }, drawStep);
    const told = steps.flatMap(({ id, title, text }) => (id === "gauge" ? [] : [title, text]));
    expect(told.filter((words) => /\b(cut|knife|scissors|mat)\b/i.test(words))).toEqual([]);
    expect(steps.flatMap(({ cautions }) => cautions)).not.toContain("blade");
    expect(suppliesOf(kit, whole, counts).map(({ id }) => id)).not.toContain("blades");
  });

  // Worked out by hand: leaves 9 to 104 are 5 batches of at most 20, and none of the first 19 is in the tack list.
  it("says how long wet glue dries, and in how many batches, in step and figures alike", () => {
    const { kit } = fixtureView("little-gull");
    const { steps, figures } = fixtureView("little-gull", {
      drying: { glue: 20, frame: 600 },
      fit: { ...kit.fit, tackWith: "glue" },
    });
    expect(steps.find(({ id }) => id === "tack")?.drying).toBe("then 20 min to dry, in each of 4 batches");
    const time = figures.key.find(({ label }) => label === "Time")?.note;
    expect(time).toMatch(/; plus 1 h 20 min for glue to dry, 20 min after each of 4 batches$/);
  });

  it("adds what dries overnight to the figures, and nothing where dots hold", () => {
    const note = (slug: string): string | undefined =>
      fixtureView(slug).figures.key.find(({ label }) => label === "Time")?.note;
    expect(note("harbour-moon")).toMatch(/; plus 12 h 30 min for glue to dry$/);
    expect(note("little-gull")).not.toContain("dry");
  });
});
