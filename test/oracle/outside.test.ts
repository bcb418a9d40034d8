import { describe, expect, it } from "vitest";
import { cellEdges, type Fan, readingPositions, tip } from "./fan.ts";
import type { KitInput } from "./kit-input.ts";
import { bookPages, expectFit, expectPattern } from "./oracle.ts";

const SQUARE = { width: 1, height: 1 };

const HARBOUR: KitInput = {
  picture: { levels: { rim: ["#rim"], well: ["#well"] } },
  levels: [
    { name: "rim", line: 2 },
    { name: "wall", line: 3, background: true },
    { name: "well", line: 5 },
  ],
  gauge: { lines: [10, 18, 26, 34, 42] },
  book: { leafHeight: 216, leafWidth: 140, blockThickness: 24, leaves: 204, pageOneLeaf: 5, lastPage: 399 },
  fit: { borderLeaves: [12, 12], pictureLeaves: "fill", head: 40, height: 130, opening: "solve", markStep: 0.5 },
};

/** Concentric discs about the middle of a 200 × 200 box, radii in its units. */
function discs(...radii: [id: string, r: number][]): string {
  const circles = radii.map(([id, r]) => `<circle id="${id}" cx="100" cy="100" r="${r}"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200">${circles.join("")}</svg>`;
}

// Source: the published example of leaf 73 that the kit format's description prints. The radii are found from its marks:
// 58.5 mm half chord at x −21.89 and 38.5 mm give 62.46 and 44.29 mm ± 0.3 mm; 0.48 and 0.34 of the box fall inside.
describe("the printed example, leaf 73", () => {
  const pattern = expectPattern(HARBOUR, discs(["rim", 96], ["well", 68]), [73]);

  it("has the stated opening and widths", async () => {
    const { opening, width, tipWidth, firstLeaf, lastLeaf } = await pattern;
    expect([firstLeaf, lastLeaf]).toEqual([13, 192]);
    expect(opening).toBeCloseTo(1.0478, 4);
    expect(width).toBeCloseTo(130, 2);
    expect(tipWidth).toBeCloseTo(129.32, 2);
  });

  it("has the stated pages, positions and marks", async () => {
    const leaf = (await pattern).leaves.find((l) => l.leaf === 73)!;
    expect([leaf.patternPage, leaf.bookPage]).toEqual([121, 137]);
    expect(leaf.x.map((x) => Number(x.toFixed(2)))).toEqual([-21.89, -20.68, -18.26]);
    expect(leaf.runs.map((r) => r.level)).toEqual([2, 1, 3, 1, 2]);
    expect(leaf.runs.map((r) => Math.round(2 * r.to) / 2)).toEqual([46.5, 66.5, 143.5, 163.5, 216]);
  });
});

// Source: table of the domain description, section 4. Assumed here, as it states no more than "a circle ring": radii 0.47
// and 0.33 of the box about its middle; 10 border leaves each side; flat spine; the ring alone, without parallax.
// The shown ring fills each leaf's cell (between the midways of the tips at d1) with that leaf's column, taken at
// (i + ½)/n of the picture when sliced uniformly; the drawn ring is the picture stretched to the displayed width, which
// is its height too. No marks are rounded. Other rings of like thickness agree within 0.01 as well.
describe("sampling of a ring", () => {
  const table = [
    [60, 0.957],
    [90, 0.901],
    [110, 0.851],
    [150, 0.719],
  ] as const;

  it.each(table)("at %d° uniform slices overlap the drawn ring by %d", (degrees, stated) => {
    const { edges, width } = ringBook(degrees);
    const uniform = edges.slice(1).map((_, i) => (i + 0.5) / 180);
    expect(Math.abs(ringOverlap(edges, width, uniform) - stated)).toBeLessThan(0.01);
  });

  it.each(table)("at %d° slices at the tips keep 0.98 or more", (degrees) => {
    const { edges, width, tips } = ringBook(degrees);
    const atTips = tips.map((x) => (x - edges[0]!) / width);
    expect(ringOverlap(edges, width, atTips)).toBeGreaterThanOrEqual(0.98);
  });
});

function ringBook(degrees: number) {
  const opening = (degrees * Math.PI) / 180;
  const fan: Fan = { leafWidth: 140, blockThickness: 20, leaves: 200, opening, spine: "flat", direction: "ltr" };
  const tips = readingPositions(fan, 11, 190, 20, "front");
  const edges = cellEdges(tips);
  return { tips, edges, width: edges[180]! - edges[0]! };
}

/** Intersection over union of the ring shown in cells, each with the column at its fraction of the picture, and the drawn one. */
function ringOverlap(edges: number[], width: number, fractions: number[]): number {
  const grid = 1000;
  const inRing = (s: number, v: number) => {
    const r = Math.hypot(s - 0.5, v - 0.5);
    return r >= 0.33 && r <= 0.47;
  };
  let [both, either, cell] = [0, 0, 0];
  for (let i = 0; i < grid; i++) {
    const s = (i + 0.5) / grid;
    while (edges[cell + 1]! < edges[0]! + s * width) cell++;
    for (let row = 0; row < grid; row++) {
      const v = (row + 0.5) / grid;
      const [drawn, shown] = [inRing(s, v), inRing(fractions[cell]!, v)];
      if (drawn && shown) both++;
      if (drawn || shown) either++;
    }
  }
  return both / either;
}

// Source: closed form. The half chord of a disc of radius r at x is √(r² − x²); with discs a < b at levels 1 and 2 on the
// background 3, leaf j shows level 1 within the chord of a at x1 and else level 2 within the chord of b at x2.
// librsvg draws a circle with four cubic curves, true to 2.7e-4 of its radius, hence the allowance.
describe("spans of discs", () => {
  const kit: KitInput = {
    ...HARBOUR,
    picture: { levels: { near: ["#near"], middle: ["#middle"] } },
    levels: [
      { name: "near", depth: 15 },
      { name: "middle", depth: 25 },
      { name: "far", depth: 45, background: true },
    ],
  };
  const variants: [string, KitInput][] = [
    ["flat, ltr", kit],
    ["rounded, rtl", { ...kit, book: { ...kit.book, direction: "rtl" }, fit: { ...kit.fit, spine: "rounded" } }],
    ["with unequal borders", { ...kit, fit: { ...kit.fit, borderLeaves: [5, 40] } }],
  ];

  it.each(variants)("have the chords' ends, %s", async (_, input) => {
    const e = await expectPattern(input, discs(["middle", 80], ["near", 50]));
    const scale = e.width / 200;
    const middle = e.cellEdges[0]! + e.width / 2;
    for (const leaf of e.leaves.filter((l) => l.patternPage !== null)) {
      const near = Math.sqrt((50 * scale) ** 2 - (leaf.x[0]! - middle) ** 2);
      const far = Math.sqrt((80 * scale) ** 2 - (leaf.x[1]! - middle) ** 2);
      for (const [level, half, r] of [
        [1, near, 50 * scale],
        [2, far, 80 * scale],
      ] as const) {
        if (!(half >= 2)) continue;
        const runs = leaf.runs.filter((run) => run.level <= level);
        const allowed = 0.01 + (2.8e-4 * r * r) / half;
        expect(Math.abs(runs[0]!.from - (105 - half))).toBeLessThan(allowed);
        expect(Math.abs(runs.at(-1)!.to - (105 + half))).toBeLessThan(allowed);
      }
      if (!(near > 0) && !(far > 0)) expect(leaf.runs).toEqual([{ from: 0, to: 216, level: 3 }]);
    }
  });
});

// Source: closed form. Under the rounded spine the tips at one depth lie on a circle of radius T/Φ + W − d.
describe("tips", () => {
  const fan: Fan = {
    leafWidth: 140,
    blockThickness: 24,
    leaves: 204,
    opening: 1.2,
    spine: "rounded",
    direction: "ltr",
  };

  it("lie on a circle when the spine is rounded, so that arc lengths are R·Φ·i/N", () => {
    const radius = 24 / 1.2 + 140 - 18;
    const t = tip(fan, 30, 18);
    expect(Math.hypot(t.x, t.z + 24 / 1.2)).toBeCloseTo(radius, 9);
    const along = readingPositions(fan, 1, 204, 18, "along");
    expect(along[203]! - along[0]!).toBeCloseTo((radius * 1.2 * 203) / 204, 3);
  });

  it("go from left to right in an ltr book and from right to left in an rtl one", () => {
    expect(tip(fan, 1, 18).x).toBeLessThan(0);
    expect(tip({ ...fan, direction: "rtl" }, 1, 18).x).toBe(-tip(fan, 1, 18).x);
    expect(tip({ ...fan, spine: "flat" }, 1, 18).x).toBeCloseTo(
      -12 * (203 / 204) - 122 * Math.sin(0.6 * (203 / 204)),
      9,
    );
  });
});

// Source: common practice, no source.
describe("leaves and pages", () => {
  const book = { leafHeight: 210, leafWidth: 140, blockThickness: 20, leaves: 200, pageOneLeaf: 1, lastPage: 399 };
  const kit: KitInput = { ...HARBOUR, book, fit: { ...HARBOUR.fit, borderLeaves: [10, 10] } };

  it("a last page 399 and 10 border leaves at each end leave 180 picture leaves, pattern pages 1 to 359", async () => {
    const pages = bookPages(book);
    expect([pages.length, pages[199]]).toEqual([200, 399]);
    const leaves = (await expectPattern(kit, discs(["rim", 90], ["well", 60]), [])).leaves;
    const patternPages = leaves.flatMap((l) => l.patternPage ?? []);
    expect([patternPages.length, patternPages[0], patternPages.at(-1)]).toEqual([180, 1, 359]);
    expect(leaves).toHaveLength(200);
  });

  it("pattern page 1 on book page 13 puts pattern page 19 on book page 31", async () => {
    const offset = { ...kit, fit: { ...kit.fit, borderLeaves: [6, 10] as [number, number] } };
    const leaves = (await expectPattern(offset, discs(["rim", 90], ["well", 60]), [])).leaves;
    expect(leaves.find((l) => l.patternPage === 1)!.bookPage).toBe(13);
    expect(leaves.find((l) => l.patternPage === 19)!.bookPage).toBe(31);
  });

  it("plates have no number and later leaves count that many leaves less", () => {
    const pages = bookPages({
      ...book,
      leaves: 10,
      pageOneLeaf: 3,
      lastPage: 9,
      plates: [{ afterPage: 4, leaves: 2 }],
    });
    expect(pages).toEqual([null, null, 1, 3, null, null, 5, 7, 9, null]);
  });
});

describe("solving", () => {
  it("gives back each of the three quantities from the other two", () => {
    const { opening, height } = expectFit(HARBOUR, SQUARE);
    const degrees = (opening * 180) / Math.PI;
    const byHeight = { ...HARBOUR, fit: { ...HARBOUR.fit, opening: degrees, height: "solve" as const } };
    const byCount = { ...HARBOUR, fit: { ...HARBOUR.fit, opening: degrees, pictureLeaves: "solve" as const } };
    expect(expectFit(byHeight, SQUARE).height).toBeCloseTo(height, 6);
    expect(expectFit(byCount, SQUARE).lastLeaf).toBe(192);
  });

  it("throws when even 180° is too narrow", () => {
    const tall = { ...HARBOUR, fit: { ...HARBOUR.fit, height: 400 } };
    expect(() => expectFit(tall, SQUARE)).toThrow("no opening fits");
  });
});
