import { describe, expect, it } from "vitest";
import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import { doItem } from "../../../src/core/bench/item-done.ts";
import { type Progress, passGate } from "../../../src/core/bench/progress.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { cutStepText, type ItemCard, itemCard } from "../../../src/output/views/item-card.ts";
import { itemName } from "../../../src/output/views/item-name.ts";
import { begin, madePlan } from "../../core/bench/made.ts";
import { litKit, madeKit } from "../../core/kit/made-kit.ts";

const MM = { units: "mm", step: 1 } as const;

function itemOf(plan: BenchPlan, name: string) {
  return plan.places.find((place) => place.item?.name === name)!.item!;
}

function card(kit: Kit, name: string, progress: Progress = begin()): ItemCard {
  const plan = madePlan(kit);
  const told = itemCard(plan, progress, itemOf(plan, name), { style: MM, stepText: cutStepText });
  return JSON.parse(JSON.stringify(told).replaceAll("\u00a0", " ")) as ItemCard;
}

describe("itemCard(plan, progress, item, style)", () => {
  // By hand: 120 × 80 mm, 40 leaves, the first of the made kit's steps.
  it("tells a step with this kit's figures, as the kit's page does", () => {
    const check = card(madeKit(), "step check");
    expect(check).toMatchObject({ of: "The book", title: "Check the book", leaves: [], time: "", number: 1 });
    expect(check.lines).toEqual([expect.stringContaining("40 leaves, 120 mm tall and 80 mm wide, pressed 6 mm thick")]);
    expect(check.tools).toContain("ruler");
  });

  // By hand: forty leaves at 6 s; page 1 stands on leaf 1, and page 79 on leaf 40.
  it("tells on which leaves a line is pressed", () => {
    const line = card(madeKit(), "score 2 1-40");
    expect(line).toMatchObject({ of: "Press the score lines", title: "Level 2: wall, line 2, 20 mm", number: 4 });
    expect(line.lines[0]).toBe("On 40 leaves, from p. 1 (leaf 1) to p. 79 (leaf 40).");
    expect(line.time).toBe("about 4 min");
  });

  it("tells of a line only the leaves that still need it", () => {
    const most = passGate(begin(), "score 2 1-39");
    expect(card(madeKit(), "score 2 1-40", most).lines[0]).toBe("On one leaf: p. 79 (leaf 40).");
    const all = passGate(begin(), "score 2 1-40");
    expect(card(madeKit(), "score 2 1-40", all).lines[0]).toMatch(/^On 40 leaves/);
  });

  it("tells where each leaf of a batch is tacked, how, and how long that dries", () => {
    const glued = card(madeKit({ fit: { tackWith: "glue" } }), "tack batch 2");
    expect(glued).toMatchObject({ of: "Batch 2 of 2", title: "Tack loose flaps", time: "then 30 min to dry" });
    expect(glued.lines).toEqual([expect.stringMatching(/^2 flaps are loose.*clear-drying glue/)]);
    // By hand: leaf 30 carries the square from 38 to 62 mm; nothing comes after leaf 40.
    expect(glued.leaves).toEqual([
      { leaf: "p. 59 (leaf 30)", where: "38–62 mm" },
      { leaf: "p. 79 (leaf 40)", where: "0–120 mm" },
    ]);
    expect(card(madeKit(), "tack batch 2").time).toBe("");
  });

  it("tells of a batch only the leaves that are still open", () => {
    const plan = madePlan();
    const tacks = itemOf(plan, "tack batch 2");
    const leaves = (progress: Progress) =>
      itemCard(plan, progress, tacks, { style: MM, stepText: cutStepText }).leaves.map(({ leaf }) => leaf);
    const both = ["p. 59 (leaf 30)", "p. 79 (leaf 40)"];
    expect(leaves(begin())).toEqual(both);
    expect(leaves(passGate(begin(), "tack 40"))).toEqual(both.slice(0, 1));
    expect(leaves(doItem(begin(), tacks))).toEqual(both);
  });

  // By hand: the frame is the eleventh of the lit kit's steps, with both border steps, before it dries overnight.
  it("tells of the window in its order, with its drying", () => {
    expect(card(litKit(), "step frame")).toMatchObject({
      of: "Light and window",
      time: "then 12 h to dry",
      number: 11,
      parts: "base frame, closure tab, holder",
    });
  });
});

describe("itemName(plan, item, style)", () => {
  it.each([
    ["step gauge", "Make the gauge"],
    ["score 1 11-30", "Press the score lines (square, line 1, 10 mm)"],
    ["tack batch 2", "Tack loose flaps (Batch 2 of 2)"],
  ])("%s is %s", (name, words) => {
    const plan = madePlan();
    expect(itemName(plan, itemOf(plan, name), MM).replaceAll("\u00a0", " ")).toBe(words);
  });
});
