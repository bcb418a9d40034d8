import { describe, expect, it } from "vitest";
import type { SupplyId } from "../../../src/core/kit/supply-id.ts";
import { type WorkStep, workStep } from "../../../src/core/steps/work-step.ts";
import { cautionsFor } from "../../../src/output/views/cautions.ts";
import type { KitView } from "../../../src/output/views/kit-view.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

const one = (when: "always" | "cuts" | "glue" | "light") => ({ id: when, when, title: "", text: "", short: "" });
const ALL = (["always", "cuts", "glue", "light"] as const).map(one);

const using = (...supplies: readonly SupplyId[]): WorkStep => workStep("book", "fold", { supplies });

describe("cautionsFor(cautions, work)", () => {
  it.each<[string, readonly WorkStep[], string[]]>([
    ["folding alone", [using("boneFolder")], ["always"]],
    ["a knife", [using("ruler"), using("knife", "mat")], ["always", "cuts"]],
    ["scissors", [using("scissors")], ["always"]],
    ["glue", [using("glue")], ["always", "glue"]],
    ["glue dots", [using("glueDots")], ["always", "glue"]],
    ["a light", [using("light", "cells")], ["always", "light"]],
    ["everything", [using("knife"), using("glue"), using("light")], ["always", "cuts", "glue", "light"]],
  ])("are for %s", (_, work, ids) => {
    expect(cautionsFor(ALL, work).map(({ id }) => id)).toEqual(ids);
  });
});

const views = new Map(FIXTURE_KITS.map((slug) => [slug, fixtureView(slug)] as const));
const viewOf = (slug: (typeof FIXTURE_KITS)[number]): KitView => views.get(slug)!;

/** The steps that carry a caution, by their ids. */
const carrying = ({ steps }: KitView, id: string): string[] =>
  steps.filter(({ cautions }) => cautions.includes(id)).map((step) => step.id);

const stepsWith = ({ steps }: KitView, tool: SupplyId): string[] =>
  steps.filter((step) => step.tools.includes(tool)).map((step) => step.id);

describe("the cautions of steps", () => {
  // Common practice: a caution stands where the hand meets the danger. By hand for a kit with light and window, and without.
  it.each([
    ["harbour-moon", "who", ["check"]],
    ["harbour-moon", "blade", ["fold", "notch", "cut"]],
    ["harbour-moon", "glue", ["tack"]],
    ["harbour-moon", "flame", ["light"]],
    ["harbour-moon", "cell", ["light"]],
    ["harbour-moon", "bench", ["fold"]],
    ["little-gull", "blade", ["fold"]],
    ["little-gull", "flame", ["hold"]],
    ["little-gull", "cell", []],
  ] as const)("%s: %s at %j", (slug, id, steps) => {
    expect(carrying(viewOf(slug), id)).toEqual(steps);
  });

  it.each(FIXTURE_KITS)("%s: a knife is never without its caution, and no step without a knife has it", (slug) => {
    const view = viewOf(slug);
    expect(carrying(view, "blade")).toEqual(stepsWith(view, "knife"));
  });

  it.each(FIXTURE_KITS)("%s: every caution of the kit stands at a step, and no step has another", (slug) => {
    const view = viewOf(slug);
    const carried = new Set(view.steps.flatMap(({ cautions }) => cautions));
    expect([...carried].toSorted()).toEqual(view.cautions.map(({ id }) => id).toSorted());
  });
});
