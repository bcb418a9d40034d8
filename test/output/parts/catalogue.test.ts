import { describe, expect, it } from "vitest";
import { type CataloguePage, cataloguePage } from "../../../src/output/parts/catalogue.ts";
import { html } from "../../../src/output/parts/markup.ts";
import { classCard } from "../../../src/output/views/class/class-card.ts";
import { kitCard } from "../../../src/output/views/kit-card.ts";
import { fixtureClassView } from "./class/made-view.ts";

const view = fixtureClassView();
const named = (title: string, state: string) => fixtureClassView({ title, state });

function markupOf(shown: Partial<CataloguePage>): string {
  const page = { heading: "Folds", story: html``, kits: [], classes: [], guide: undefined };
  return String(cataloguePage({ ...page, link: (target) => `..${target}`, ...shown }));
}

function lists(classes: readonly (typeof view)[]): string[][] {
  const markup = markupOf({ kits: view.kits.map(kitCard), classes: classes.map(classCard) });
  return [...markup.matchAll(/<section id="[a-z-]*classes">[\s\S]*?<\/section>/g)].map(([section]) =>
    [...section.matchAll(/<h[23]>(?:<a[^>]*>)?([^<]+)/g)].map(([, text]) => text!),
  );
}

describe("cataloguePage(page)", () => {
  it("lists classes to come in their order, and below them those that are over, the latest first", () => {
    const classes = [
      named("One", "closed"),
      named("Two", "held"),
      named("Three", "announced"),
      named("Four", "fitted"),
    ];
    expect(lists(classes)).toEqual([
      ["Classes", "Three", "Four"],
      ["Past classes", "Two", "One"],
    ]);
  });

  it("has no list where there is nothing for it", () => {
    expect(lists([view])).toHaveLength(1);
    expect(lists([named("One", "held")])).toEqual([["Past classes", "One"]]);
    expect(lists([])).toEqual([]);
  });

  it("says how a first kit is made where there is none, and none is still worked out", () => {
    expect(markupOf({})).toContain("There is no kit yet.");
    for (const shown of [{ hasWaiting: true }, { kits: view.kits.map(kitCard) }])
      expect(markupOf(shown)).not.toContain("There is no kit yet.");
  });
});
