import { describe, expect, it } from "vitest";
import { stepGist } from "../../../src/words/gists.ts";
import { stepPartName } from "../../../src/words/step-parts.ts";
import { toolName } from "../../../src/words/tools.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

describe("stepsOf(kit, pattern, counts, effort)", () => {
  it.each(FIXTURE_KITS)("%s: each step is there once, with words of its own for all that it needs", (slug) => {
    const { steps } = fixtureView(slug);
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
    for (const { id, title, text, parts, tools } of steps) {
      expect([title, text.mm, text.in, stepGist(id)].every((words) => words.length > 5)).toBe(true);
      for (const name of [...parts.map(stepPartName), ...tools.map(toolName)]) expect(name).toMatch(/^\S.*\S$/);
    }
  });

  it.each(FIXTURE_KITS)("%s: says the hold width and the string in whole millimetres", (slug) => {
    const { steps, pattern } = fixtureView(slug);
    const text = (wanted: string): string => steps.find(({ id }) => id === wanted)?.text.mm ?? "";
    expect(text("hold")).toContain(`are ${Math.round(pattern.fit.holdWidth)}\u00a0mm apart at the head edge`);
    const string = pattern.window?.stringLength;
    if (string !== undefined) expect(text("close")).toContain(`Tie ${Math.round(string)}\u00a0mm of string`);
  });
});
