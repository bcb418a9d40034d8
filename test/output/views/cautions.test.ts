import { describe, expect, it } from "vitest";
import type { Counts } from "../../../src/core/plan/effort.ts";
import { cautionsFor } from "../../../src/output/views/cautions.ts";
import type { KitView } from "../../../src/output/views/kit-view.ts";
import { NOTHING } from "../../core/supplies/made-supplies.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

const one = (when: "always" | "cuts" | "glue" | "light") => ({ id: when, when, title: "", text: "", short: "" });
const ALL = (["always", "cuts", "glue", "light"] as const).map(one);

describe("cautionsFor(cautions, counts, hasLight)", () => {
  it.each<[string, Partial<Counts>, boolean, string[]]>([
    ["folding alone", { leaves: 9, scores: 9, folds: 9 }, false, ["always"]],
    ["cuts", { cuts: 1 }, false, ["always", "cuts"]],
    ["notches", { notches: 1 }, false, ["always", "cuts"]],
    ["parts, which are cut and glued", { parts: 1 }, false, ["always", "cuts", "glue"]],
    ["tacks", { tacks: 1 }, false, ["always", "glue"]],
    ["a light", {}, true, ["always", "light"]],
    ["everything", { cuts: 1, tacks: 1 }, true, ["always", "cuts", "glue", "light"]],
  ])("are for %s", (_, counts, hasLight, ids) => {
    expect(cautionsFor(ALL, { ...NOTHING, ...counts }, hasLight).map(({ id }) => id)).toEqual(ids);
  });
});

const views = new Map(FIXTURE_KITS.map((slug) => [slug, fixtureView(slug)] as const));
const viewOf = (slug: (typeof FIXTURE_KITS)[number]): KitView => views.get(slug)!;

/** The steps that carry a caution, by their ids. */
const carrying = ({ steps }: KitView, id: string): string[] =>
  steps.filter(({ cautions }) => cautions.includes(id)).map((step) => step.id);

const using = ({ steps }: KitView, ...tools: readonly string[]): string[] =>
  steps.filter((step) => step.tools.some((tool) => tools.includes(tool))).map((step) => step.id);

describe("the cautions of steps", () => {
  // Common practice: a caution stands where the hand meets the danger. By hand for a kit with light and window, and without.
  it.each([
    ["harbour-moon", "who", ["check"]],
    ["harbour-moon", "blade", ["gauge", "fold", "notch", "cut"]],
    ["harbour-moon", "glue", ["tack", "frame", "glaze", "decorate", "hang", "close"]],
    ["harbour-moon", "flame", ["light"]],
    ["harbour-moon", "cell", ["light"]],
    ["harbour-moon", "bench", ["fold"]],
    ["little-gull", "blade", ["gauge", "fold"]],
    ["little-gull", "flame", ["hold"]],
    ["little-gull", "cell", []],
  ] as const)("%s: %s at %j", (slug, id, steps) => {
    expect(carrying(viewOf(slug), id)).toEqual(steps);
  });

  it.each(FIXTURE_KITS)("%s: a knife is never without its caution, nor is glue", (slug) => {
    const view = viewOf(slug);
    expect(carrying(view, "blade")).toEqual(using(view, "craftKnife"));
    expect(carrying(view, "glue")).toEqual(using(view, "glue", "glueDots"));
  });

  it.each(FIXTURE_KITS)("%s: every caution of the kit stands at a step, and no step has another", (slug) => {
    const view = viewOf(slug);
    const carried = new Set(view.steps.flatMap(({ cautions }) => cautions));
    expect([...carried].toSorted()).toEqual(view.cautions.map(({ id }) => id).toSorted());
  });
});
