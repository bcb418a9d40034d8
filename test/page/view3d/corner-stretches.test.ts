import { describe, expect, it } from "vitest";
import { creaseAt } from "../../../src/core/corner/crease.ts";
import { roundData } from "../../../src/output/data/round-data.ts";
import { coreMesh } from "../../../src/page/view3d/board-mesh.ts";
import { cornerStretches, type Stretch } from "../../../src/page/view3d/corner-stretches.ts";
import { leafMesh } from "../../../src/page/view3d/leaf-mesh.ts";
import { fanAt } from "../../../src/page/view3d/pose.ts";
import { publishedCorners } from "../../core/pattern/published.ts";
import { cornerKit } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";
import { fc } from "../../seed.ts";

const BOOK = { leafHeight: 200, leafWidth: 130 };
const ROOM = { leafHeight: 200, reach: 125, step: 0.5 };

/** Area of the flaps, and of the leaf that still stands, mm²: trapezoids between the ends of stretches. */
function areas(stretches: readonly Stretch[]): { flaps: number; body: number } {
  let [flaps, body] = [0, 0];
  for (const { from, to, upper, lower } of stretches) {
    body += ((upper.tip + lower.tip) / 2) * (to - from);
    if (upper.flapEnd === undefined || lower.flapEnd === undefined) continue;
    flaps += ((upper.tip - upper.flapEnd + lower.tip - lower.flapEnd) / 2) * (to - from);
  }
  return { flaps, body };
}

const marks = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }));

describe("cornerStretches(corners, book)", () => {
  // A fold moves paper and takes none away: a flap is as large as the corner that it was, by the area of a triangle.
  it("folds corners over without losing any of them, at 45° and steeper", () => {
    fc.assert(
      fc.property(marks, (two) => {
        const [from, to] = two.map((half) => half / 2).sort((a, b) => a - b) as [number, number];
        const head = creaseAt(from, "head", ROOM)?.to.depth ?? 0;
        const tail = creaseAt(to, "tail", ROOM)?.to.depth ?? 0;
        const { flaps, body } = areas(cornerStretches([from, to, head, tail], BOOK));
        const corners = (from * head + (200 - to) * tail) / 2;
        expect(flaps).toBeCloseTo(corners, 6);
        expect(body).toBeCloseTo(200 * 130 - corners, 6);
      }),
    );
  });

  // By hand: 30 mm above the mark at 60 the crease of 45° is 30 mm in, and the flap behind it goes on to 60 mm.
  it("stands where its crease is, with the corner behind it", () => {
    const [above, shown, below] = cornerStretches([60, 160, 60, 40], BOOK);
    expect(above).toMatchObject({
      from: 0,
      to: 60,
      level: 2,
      upper: { tip: 70, flapEnd: 70 },
      lower: { tip: 130, flapEnd: 70 },
    });
    expect(shown).toMatchObject({ from: 60, to: 160, level: 1, upper: { tip: 130, flapEnd: undefined } });
    expect(below).toMatchObject({
      from: 160,
      to: 200,
      upper: { tip: 130, flapEnd: 90 },
      lower: { tip: 90, flapEnd: 90 },
    });
  });
});

describe("the view of a kit that is folded by corners", () => {
  const published = JSON.parse(publishedCorners(cornerKit({}, SILHOUETTES[0]!)));
  const { book, leaves } = published;
  const data = roundData(published);
  const mesh = leafMesh(data);

  it("has the picture at the unfolded fore-edge", () => {
    expect(data.levels.map(({ depth }) => depth)).toEqual([0, expect.any(Number)]);
    for (const { leaf, spans } of leaves as { leaf: number; spans: { from: number; to: number }[] }[]) {
      const own = [...mesh.leaf.keys()].filter((i) => mesh.level[i] === 1 && Math.round(mesh.leaf[i]!) === leaf - 1);
      const shown = own.filter((i) => mesh.radius[i] === book.leafWidth).map((i) => mesh.height[i]!);
      const heights = spans.length > 0 ? [spans[0]!.from, spans[0]!.to] : [];
      expect([...new Set(shown)].sort((a, b) => a - b)).toEqual(heights.map((one) => expect.closeTo(one, 4)));
    }
  });

  it("shows every leaf of the book", () => {
    expect(new Set([...mesh.leaf].map((leaf) => Math.round(leaf - 0.3))).size).toBe(book.leaves);
    expect(mesh.index.every((vertex) => vertex < mesh.leaf.length)).toBe(true);
    expect(mesh.radius.every(Number.isFinite)).toBe(true);
  });

  it("lets nothing of the dark inside stand where a corner is folded away", () => {
    const core = coreMesh(data, fanAt(data, data.fit.opening));
    const ends = data.leaves.flatMap(({ corners }) => (corners ? [corners[2], corners[3]] : []));
    const stands = Math.max(...Array.from({ length: core.length / 3 }, (_, i) => core[3 * i + 2]!));
    // Of leaves in the middle of a flat spine, a place's distance to the viewer is its radius.
    expect(stands).toBeLessThanOrEqual(book.leafWidth - Math.max(...ends));
  });
});
