import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { SupplyId } from "../../../src/core/kit/supply-id.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { type Counts, countsOf } from "../../../src/core/plan/effort.ts";
import { workOf } from "../../../src/core/steps/work.ts";
import type { MadePart } from "../../../src/core/steps/work-step.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { partsOf } from "../../../src/core/window/window.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../../output/feeds/made-kits.ts";
import { type KitChanges, madeKit } from "../kit/made-kit.ts";
import { madePattern } from "../plan/made-pattern.ts";
import { NOTHING } from "../supplies/made-supplies.ts";

type Work = readonly [kit: Kit, pattern: Pattern, counts: Counts];

const fixture = (slug: (typeof FIXTURE_KITS)[number], changes: Partial<Kit["fit"]> = {}): Work => {
  const { kit, pattern } = fixtureView(slug);
  return [{ ...kit, fit: { ...kit.fit, ...changes } }, pattern, countsOf(pattern)];
};
const made = (changes: KitChanges, counts: Partial<Counts> = {}): Work => [
  madeKit(changes),
  madePattern(),
  { ...NOTHING, ...counts },
];

const WORKS: readonly [string, Work][] = [
  ...FIXTURE_KITS.flatMap((slug): [string, Work][] => [
    [slug, fixture(slug)],
    [`${slug} with scissors and wet glue`, fixture(slug, { cutWith: "scissors", tackWith: "glue" })],
  ]),
  ["a kit without border leaves", made({ fit: { borderLeaves: [0, 0] } }, { cuts: 4 })],
  ["a kit that is only folded", made({})],
];

const ids = (work: Work): string[] => workOf(...work).map(({ id }) => id);
const used = (work: Work): SupplyId[] => [...new Set(workOf(...work).flatMap(({ supplies }) => supplies))];

describe("workOf(kit, pattern, counts)", () => {
  it.each(WORKS)("%s: a hand that goes step by step has every part that it needs", (_, work) => {
    const there = new Set<MadePart>();
    for (const { makes, uses } of workOf(...work)) {
      for (const part of uses) expect(there.has(part)).toBe(true);
      for (const part of makes) there.add(part);
    }
    expect(there).toEqual(new Set(["gauge", ...partsOf(work[1].window)]));
  });

  it.each(WORKS)("%s: what its steps use is in the supplies, and nothing else is", (_, work) => {
    const listed = suppliesOf(work[0], work[1], work[2])
      .map(({ id }) => id)
      .filter((id) => id !== undefined);
    expect(listed.toSorted()).toEqual(used(work).toSorted());
  });

  // Common practice, no source: closing border leaves last of all leaves, the holder cut before the book is held,
  // the door made while the frame dries and hung when it has.
  it("goes from the closed book to the lit one", () => {
    expect(ids(fixture("harbour-moon"))).toEqual([
      ...["check", "find", "gauge", "score", "borderBefore", "fold", "notch", "tack", "borderAfter"],
      ...["cut", "hold", "frame", "glaze", "decorate", "hang", "close", "light"],
    ]);
    expect(ids(made({ fit: { borderLeaves: [0, 3] } }))).toEqual([
      ...["check", "find", "gauge", "score", "fold", "borderAfter", "hold"],
    ]);
  });

  it("cuts leaves with what the kit says, notches and window with a knife", () => {
    const cutting = (work: Work): string[] =>
      workOf(...work)
        .filter(({ supplies }) => supplies.includes("knife"))
        .map(({ id }) => id);
    expect(cutting(fixture("harbour-moon"))).toEqual(["fold", "notch", "cut"]);
    expect(cutting(fixture("harbour-moon", { cutWith: "scissors" }))).toEqual(["notch", "cut"]);
    expect(cutting(fixture("little-gull", { cutWith: "scissors" }))).toEqual([]);
  });

  it("lets wet glue dry as long as the kit says, and dots not at all", () => {
    const dries = (work: Work): number[] =>
      workOf(...work)
        .filter((step) => step.dries > 0)
        .map((step) => step.dries);
    const [kit, pattern, counts] = fixture("harbour-moon", { tackWith: "glue" });
    expect(dries([{ ...kit, drying: { glue: 20, frame: 600 } }, pattern, counts])).toEqual([20, 600, 20]);
    expect(dries(fixture("harbour-moon"))).toEqual([720, 30]);
    expect(dries(fixture("little-gull"))).toEqual([]);
  });
});
