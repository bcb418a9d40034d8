import { describe, expect, it } from "vitest";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { cornerWays } from "../../../src/core/makeability/corner-ways.ts";
import type { WayOut } from "../../../src/core/makeability/ways.ts";
import type { CornerPattern } from "../../../src/core/pattern/corner-pattern.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { atHeight } from "../../../src/core/refit/height-offer.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { cornerLines, cornerWayTexts } from "../../../src/words/findings/corner-ways.ts";
import { cornerKit } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

function made(kit: Kit): { readonly pattern: CornerPattern; readonly findings: readonly Doubt[] } {
  const result = fitAny(kit);
  if (!result.fits || !result.pattern.corner) throw new Error("is not folded by corners");
  return { pattern: result.pattern, findings: result.findings };
}

function waysOf(kit: Kit) {
  const { pattern, findings } = made(kit);
  return cornerWays(kit, pattern, findings);
}

/** A way out as its reader would take it; smoother outlines are no figure. */
function taken(kit: Kit, { change }: WayOut): Refit | undefined {
  switch (change.kind) {
    case "height":
      return atHeight(kit, change.height);
    case "borders":
      return { borderLeaves: [change.before, change.after] };
    case "opening":
      return { openingDegrees: change.degrees };
    default:
      return undefined;
  }
}

const [DISC, , BARS, , LADDER] = SILHOUETTES;
/** Corners of 58 mm below the disc, and 50 mm of room. */
const NARROW = cornerKit({ book: { leafWidth: 55 }, fit: { flapBulk: 0.4 } }, DISC);
const SPRINGY = cornerKit({ fit: { flapBulk: 3 } }, BARS);
/** Rungs of 9 in 100 are 3.15 mm of 35, so a mark that is rounded makes some too short. */
const SMALL = cornerKit(
  {
    book: { leafWidth: 190 },
    fit: { markStep: 1, leastTab: 3.5, shape: { solve: "opening", pictureLeaves: "fill", height: 38 } },
  },
  LADDER,
);

describe("cornerWays(kit, pattern, doubts)", () => {
  it("has nothing to tell where all is well", () => {
    expect(waysOf(cornerKit({ fit: { flapBulk: 0.1 } }, DISC))).toEqual([]);
  });

  it.each([
    ["steep creases", NARROW, "turned"],
    ["springing open", SPRINGY, "springs-open"],
  ] as const)("finds ways out of %s that hold when they are taken", (_, kit, kind) => {
    const found = waysOf(kit).find(({ trouble }) => trouble.kind === kind)!;
    expect(found.trouble.figure).toBeGreaterThan(0);
    expect(found.ways.length).toBeGreaterThan(0);
    expect(found.ways.length).toBeLessThan(4);
    let tried = 0;
    for (const way of found.ways) {
      expect(way.before).toBe(found.trouble.figure);
      expect(way.after).toBeLessThanOrEqual(0.8 * way.before);
      const refit = taken(kit, way);
      if (!refit) continue;
      tried += 1;
      const { pattern } = made(refitKit(kit, refit));
      const { opening, restingOpening } = pattern.fit;
      expect(kind === "turned" ? pattern.corner.turned : Math.max(0, restingOpening - opening)).toBeCloseTo(
        way.after,
        9,
      );
    }
    expect(tried).toBeGreaterThan(0);
  });

  it("counts strips that are merged, and a taller picture leaves fewer", () => {
    const found = waysOf(SMALL).find(({ trouble }) => trouble.kind === "merged")!;
    expect(found.trouble.figure).toBe(made(SMALL).pattern.merged.length);
    expect(found.ways.map(({ change }) => change.kind)).toContain("height");
  });

  it("says them as changes with the figure before and after", () => {
    const telling = { units: "mm", levels: NARROW.levels } as const;
    for (const kit of [NARROW, SPRINGY, SMALL]) {
      const troubles = waysOf(kit);
      const lines = cornerLines(troubles, telling);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) expect(line).toMatch(/^what helps against .+: [A-Z].+ instead of .+\)\.$/);
    }
    const one: WayOut = { change: { kind: "height", height: 105 }, before: 7, after: 1, ends: false };
    expect(cornerWayTexts({ kind: "unseen", figure: 7 }, [one, { ...one, after: 7 }], telling)).toEqual([
      "Make the picture 105\u00a0mm tall (1 such part instead of 7).",
    ]);
  });
});
