import { describe, expect, it } from "vitest";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { type Changes, discKit } from "../../core/light/disc-kit.ts";
import { discFolder } from "../../core/light/read-disc-kit.ts";

const disc = (changes: Changes = {}): Kit => discFolder({ light: false, ...changes }).kit;

function doubts<K extends Doubt["kind"]>(kind: K, kit: Kit): Extract<Doubt, { readonly kind: K }>[] {
  const result = computePattern(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return result.findings.filter((one): one is Extract<Doubt, { readonly kind: K }> => one.kind === kind);
}

const thick = (kit: Kit, caliper: number): Kit => refitKit(kit, { blockThickness: caliper * kit.book.leaves });

// Common practice, no source: a caliper outside 0.04 to 0.30 mm is almost always a mix-up of leaves and pages.
describe("a leaf's thickness", () => {
  it.each([0.0401, 0.1, 0.2999])("of %d mm is usual", (caliper) => {
    expect(doubts("caliper", thick(disc(), caliper))).toEqual([]);
  });

  it.each([0.0399, 0.3001])("of %d mm is doubted, with the figures", (caliper) => {
    const [doubt] = doubts("caliper", thick(disc({ fit: { height: 100 } }), caliper));
    expect(doubt).toMatchObject({ least: 0.04, most: 0.3, leaves: 204 });
    expect(doubt!.caliper).toBeCloseTo(caliper, 9);
  });
});

describe("leaves after the last page", () => {
  // 204 leaves, page 1 on leaf 5: 200 leaves carry 399 or 400 pages; a tenth of 204 is 20.4 leaves.
  it.each([
    [399, 0],
    [360, 0],
    [359, 0],
    [358, 1],
  ])("with last page %d are doubted %d times", (lastPage, times) => {
    const found = doubts("unnumbered-leaves", disc({ book: { lastPage } }));
    expect(found).toHaveLength(times);
    if (times > 0) expect(found[0]).toMatchObject({ lastPage, leaves: 204, unnumbered: 204 - (4 + lastPage / 2) });
  });
});

describe("the opening that flaps force", () => {
  it("is told just where it is wider than the picture's", () => {
    for (const flapBulk of [0, 0.5, 1, 2, 3, 4, 6]) {
      const kit = disc({ fit: { flapBulk } });
      const result = computePattern(kit);
      if (!result.fits) throw new Error(result.finding.kind);
      const { opening, restingOpening } = result.pattern.fit;
      expect(doubts("springs-open", kit)).toEqual(
        restingOpening > opening ? [{ kind: "springs-open", opening, resting: restingOpening }] : [],
      );
    }
  });
});

describe("a picture on few leaves", () => {
  it("is doubted where its leaves stand more than 3 mm apart, with how many and how far", () => {
    const book = (leaves: number): Kit =>
      disc({
        book: { leaves, blockThickness: leaves * 0.1, pageOneLeaf: 1, lastPage: 2 * leaves },
        fit: { borderLeaves: [2, 2] },
      });
    const [few, many] = [book(48), book(49)];
    const [doubt] = doubts("coarse", few);
    expect(doubt!.leaves).toBe(44);
    expect(doubt!.column).toBeCloseTo(130 / 43, 1);
    expect(doubts("coarse", many)).toEqual([]);
  });
});

describe("a stated height and opening", () => {
  it("are doubted from one per cent on, with how much wider or narrower", () => {
    const height = (share: number): Kit => {
      const { kit } = discFolder({ light: false, fit: { opening: 60, height: "solve" } });
      const solved = computePattern(kit);
      if (!solved.fits) throw new Error(solved.finding.kind);
      return disc({ fit: { opening: 60, height: solved.pattern.fit.height / share } });
    };
    expect(doubts("out-of-shape", height(1.009))).toEqual([]);
    expect(doubts("out-of-shape", height(0.991))).toEqual([]);
    expect(doubts("out-of-shape", height(1.011))[0]!.stretch).toBeCloseTo(1.011, 6);
    expect(doubts("out-of-shape", height(0.989))[0]!.stretch).toBeCloseTo(0.989, 6);
  });
});

describe("a light", () => {
  it("whose given floor is too narrow for it is told, with both widths", () => {
    const lit = discFolder({ light: { floor: 146, diameter: 38, height: 20 } }).kit;
    const [doubt] = doubts("narrow-floor", lit);
    expect(doubt).toMatchObject({ level: 3, need: 40 });
    // The disc's chord at the floor, 146 mm from the head: r = 45.5 mm about the height 105.
    expect(doubt!.width).toBeCloseTo(2 * Math.sqrt(45.5 ** 2 - (146 - 105) ** 2), 0);
    expect(doubts("narrow-floor", discFolder({ light: { floor: 135, diameter: 38, height: 20 } }).kit)).toEqual([]);
  });

  // The hole of the disc's frame is the well drawn inward by the lip: 91 mm less twice the lip.
  it.each([
    [60, 14.9, 0],
    [60, 15.1, 1],
  ])("%d mm wide before a hole with a lip of %d mm is doubted %d times", (diameter, lip, times) => {
    const kit = discFolder({
      light: { diameter, height: 20, clearance: 0, setback: 20 },
      insert: { outline: "well", lip, panel: "flat" },
    }).kit;
    const found = doubts("light-wider-than-hole", kit);
    expect(found).toHaveLength(times);
    if (times > 0) expect(found[0]!.width).toBeCloseTo(91 - 2 * lip, 0);
  });
});

describe("a deep level at the picture's side", () => {
  const atSide = (x: number): Kit =>
    disc({
      shapes: `<rect id="rim" x="60" y="60" width="20" height="20"/><rect id="well" x="${x}" y="60" width="60" height="60"/>`,
    });

  it("is told to be out of reach, with how much of it", () => {
    const [doubt] = doubts("level-out-of-reach", atSide(140));
    expect(doubt!.level).toBe(3);
    // Its tips stand 30 mm nearer the gutter: x = T/2·… + (W − d)·sin θ at the last leaf, by the fan's own formula.
    const result = computePattern(atSide(140));
    if (!result.fits) throw new Error(result.finding.kind);
    const last = result.pattern.leaves.find((leaf) => leaf.leaf === result.pattern.fit.lastLeaf)!;
    expect(doubt!.missing).toBeGreaterThan(0.5);
    expect(doubt!.missing).toBeLessThan(last.x[0]! - last.x[2]! + 1);
  });

  it("is not told where it keeps to the middle, or the piece is read while walking round", () => {
    expect(doubts("level-out-of-reach", atSide(70))).toEqual([]);
    expect(
      doubts(
        "level-out-of-reach",
        disc({ shapes: discKit().svg.replace(/<\/?svg[^>]*>/g, ""), fit: { view: "along" } }),
      ),
    ).toEqual([]);
  });
});

describe("merged spans", () => {
  it("are counted with their leaves, and none is told where none is merged", () => {
    const kit = disc({ fit: { leastTab: 20 } });
    const result = computePattern(kit);
    if (!result.fits) throw new Error(result.finding.kind);
    const { merged } = result.pattern;
    expect(merged.length).toBeGreaterThan(0);
    expect(doubts("merged-spans", kit)).toEqual([
      {
        kind: "merged-spans",
        spans: merged.length,
        leaves: new Set(merged.map(({ leaf }) => leaf)).size,
        leastTab: 20,
      },
    ]);
    expect(doubts("merged-spans", disc({ fit: { leastTab: 0, markStep: 0.1 } }))).toEqual([]);
  });
});

describe("a picture off the middle", () => {
  it("is told with the borders that centre it", () => {
    expect(doubts("off-centre", disc({ fit: { pictureLeaves: 181, borderLeaves: [10, 10] } }))).toEqual([
      { kind: "off-centre", unfolded: 3, before: 11, after: 12 },
    ]);
    expect(doubts("off-centre", disc())).toEqual([]);
  });
});
