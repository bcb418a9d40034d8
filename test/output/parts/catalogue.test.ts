import { describe, expect, it } from "vitest";
import { cataloguePage } from "../../../src/output/parts/catalogue.ts";
import { html } from "../../../src/output/parts/markup.ts";
import { classCard } from "../../../src/output/views/class/class-card.ts";
import { kitCard } from "../../../src/output/views/kit-card.ts";
import { fixtureClassView } from "./class/made-view.ts";

const view = fixtureClassView();
const named = (title: string, state: string) => fixtureClassView({ title, state });

function lists(classes: readonly (typeof view)[]): string[][] {
  const page = {
    heading: "Folds",
    story: html``,
    kits: view.kits.map(kitCard),
    classes: classes.map(classCard),
    guide: undefined,
  };
  const markup = String(cataloguePage({ ...page, link: (target) => `..${target}` }));
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
});
