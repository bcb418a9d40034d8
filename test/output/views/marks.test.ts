import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { viewKit } from "../../../src/output/views/kit-view.ts";
import { fixtureFolder, fixtureFrontMatter, readMadeKit } from "../../input/kit/kit-folders.ts";

/** The little gull with other units and another step; undefined where the kit is refused because of its step. */
function gull(units: "mm" | "in", markStep: number | string): PatternedKit | undefined {
  const frontMatter = fixtureFrontMatter("little-gull");
  const svg = readFileSync(join(fixtureFolder("little-gull"), "gull.svg"), "utf8");
  const picture = { ...frontMatter.picture, file: "picture.svg" };
  try {
    return readMadeKit({ ...frontMatter, units, picture, fit: { ...frontMatter.fit, markStep } }, svg);
  } catch (error) {
    if (error instanceof KitError && error.messages[0]!.field === "fit.markStep") return undefined;
    throw error;
  }
}

/** `1 13/16` or `46.5` in mm. */
function toMillimetres(text: string, units: "mm" | "in"): number {
  const parts = text.split(" ").map((part) => part.split("/").map(Number));
  return parts.reduce((sum, [over, under = 1]) => sum + over! / under, 0) * (units === "in" ? 25.4 : 1);
}

/** The marks of each leaf that page and packet show in the kit's units. */
function shownMarks(folder: PatternedKit, units: "mm" | "in"): number[][] {
  return viewKit(folder, []).rows.map((row) => row.marks.map((mark) => toMillimetres(mark.at, units)));
}

/** The marks of each leaf that are published, as a matcher. */
function publishedMarks(folder: PatternedKit): unknown[][] {
  return folder.pattern.leaves.map((leaf) => leaf.cuts.map((cut) => expect.closeTo(cut.at, 2)));
}

describe("the marks that a kit's own units show", () => {
  it.each([
    ["mm", 0.5],
    ["mm", 1],
    ["mm", 0.25],
    ["in", "1/32 in"],
    ["in", "1/16 in"],
    ["in", "1/8 in"],
  ] as const)("are the published ones, in %s at a step of %s", (units, markStep) => {
    const folder = gull(units, markStep)!;
    expect(shownMarks(folder, units)).toEqual(publishedMarks(folder));
  });

  // A step that no ruler in the kit's units has: marks are computed from the picture for one that it has, or the step is
  // refused; rounding the published marks a second time would put them up to a whole step off.
  it.each([
    ["in", 0.5, "1/32 in"],
    ["in", 1, "1/16 in"],
    ["in", "1/64 in", "1/32 in"],
    ["mm", "1/32 in", 0.5],
    ["mm", "1/16 in", 1],
  ] as const)("are rounded once, in %s at a step of %s", (units, markStep, onRuler) => {
    const folder = gull(units, markStep);
    if (folder) expect(shownMarks(folder, units)).toEqual(publishedMarks(gull(units, onRuler)!));
  });
});
