import { describe, expect, it } from "vitest";
import { seenBothWays, silhouetteSeen } from "../../../src/core/makeability/silhouette-seen.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import type { CornerPattern } from "../../../src/core/pattern/corner-pattern.ts";
import { madeKit } from "../../core/kit/made-kit.ts";
import { cellEdges, type Fan, readingPositions, tip } from "../fan.ts";
import { cornerKit, cornerPattern } from "./corner-kit.ts";
import { type FoldLine, layersAt } from "./folded-leaf.ts";
import { SILHOUETTES, type Silhouette } from "./silhouettes.ts";

const [ROWS, COLUMNS] = [199, 480];

/** How far inward a leaf begins at a height, found by halving along it: outside there is no layer of it. */
function beginsAt(at: number, lines: readonly FoldLine[], size: { height: number; width: number }): number {
  if (layersAt([at, 0], lines, size).body) return 0;
  let [low, high] = [0, size.width];
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    if (layersAt([at, middle], lines, size).body) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * Looks at a folded book from straight in front, ray by ray: of all leaves, the one that stands nearest to the viewer on the
 * ray is seen. Leaves are lines from the gutter to their edge, and edges as wide as half the way to their neighbours.
 */
function lookAt({ book, fit, leaves }: CornerPattern, silhouette: Silhouette, ground: number) {
  const fan: Fan = { ...book, opening: fit.opening, spine: fit.spine };
  const size = { height: book.leafHeight, width: book.leafWidth };
  const edges = cellEdges(readingPositions(fan, fit.firstLeaf, fit.lastLeaf, 0, "front"));
  const [left, right] = [edges[0]!, edges.at(-1)!];
  const folds = new Map(leaves.map((leaf) => [leaf.leaf as number, leaf.fold]));
  const sums = { wanted: 0, edges: 0, paper: 0, edgesRight: 0, paperRight: 0 };
  for (let row = 0; row < ROWS; row += 1) {
    const at = fit.head + ((row + 0.5) / ROWS) * fit.height;
    const standing = Array.from({ length: book.leaves }, (_, i) => {
      const fold = folds.get(i + 1);
      const lines =
        !fold || fold.kind === "straight"
          ? []
          : fold.creases.map(({ corner, from, to }): FoldLine => ({ corner, a: [from.at, 0], b: [to.at, to.depth] }));
      const depth = fold?.kind === "straight" ? fold.depth : beginsAt(at, lines, size);
      const isShown = fold?.kind === "corners" && fold.shown.from < at && at < fold.shown.to;
      const at0 = (leaf: number) => tip(fan, Math.min(book.leaves, Math.max(1, leaf)), depth).x;
      const own = at0(i + 1);
      const [before, after] = [own - at0(i) || at0(i + 2) - own, at0(i + 2) - own || own - at0(i)];
      return {
        isShown,
        root: tip(fan, i + 1, book.leafWidth),
        own: tip(fan, i + 1, depth),
        from: own - before / 2,
        to: own + after / 2,
      };
    });
    for (let column = 0; column < COLUMNS; column += 1) {
      const share = (column + 0.5) / COLUMNS;
      const x = left + share * (right - left);
      let nearest = { z: Number.NEGATIVE_INFINITY, isEdge: false, isShown: false, radius: 0 };
      for (const { isShown, root, own, from, to } of standing) {
        const isEdge = x >= from && x <= to;
        const along = (x - root.x) / (own.x - root.x);
        if (!isEdge && !(along >= 0 && along <= 1)) continue;
        const z = isEdge ? own.z : root.z + along * (own.z - root.z);
        const radius = Math.hypot(own.x - root.x, own.z - root.z) * (isEdge ? 1 : along);
        if (z > nearest.z) nearest = { z, isEdge, isShown, radius };
      }
      const isWanted = silhouette.strips(100 * share).some(([a, b]) => {
        const y = (100 * (at - fit.head)) / fit.height;
        return a <= y && y <= b;
      });
      const isAtEdge = nearest.isShown && nearest.isEdge;
      const isPaper = isAtEdge || (nearest.isShown && nearest.radius > ground);
      sums.wanted += Number(isWanted);
      sums.edges += Number(isAtEdge);
      sums.paper += Number(isPaper);
      sums.edgesRight += Number(isWanted && isAtEdge);
      sums.paperRight += Number(isWanted && isPaper);
    }
  }
  const iou = (both: number, seen: number) => both / (sums.wanted + seen - both);
  return { edges: iou(sums.edgesRight, sums.edges), paper: iou(sums.paperRight, sums.paper) };
}

describe("what is seen of a silhouette, against rays on all leaves", () => {
  const cases = SILHOUETTES.flatMap((one) => [
    [one.name, "flat", one, cornerKit({}, one)] as const,
    [
      one.name,
      "rounded, 40 leaves",
      one,
      cornerKit({ book: { leaves: 40, lastPage: 80, blockThickness: 5 }, fit: { spine: "rounded" } }, one),
    ] as const,
  ]);

  it.each(cases)("%s, %s", (_, __, silhouette, kit) => {
    const pattern = cornerPattern(kit);
    const found = silhouetteSeen(kit, pattern)!;
    const wanted = lookAt(pattern, silhouette, kit.book.leafWidth - 20);
    expect(Math.abs(found.edges - wanted.edges)).toBeLessThan(0.02);
    expect(Math.abs(found.paper - wanted.paper)).toBeLessThan(0.02);
    expect(found.paper).toBeLessThanOrEqual(1);
  });

  it("is nearly all of a disc, which needs no turns, and about what a cut shows", () => {
    const kit = cornerKit({}, SILHOUETTES[0]);
    const { folded, cut } = seenBothWays(kit, cornerPattern(kit))!;
    expect(folded.edges).toBeGreaterThan(0.96);
    expect(Math.abs(folded.edges - cut!.edges)).toBeLessThan(0.03);
  });

  it("of a ladder of five rungs at the edges is a fifth, as each is on every fifth leaf; of a cut one all", () => {
    const kit = cornerKit({}, SILHOUETTES[4]);
    const { folded, cut } = seenBothWays(kit, cornerPattern(kit))!;
    expect(folded.edges).toBeCloseTo(0.2, 1);
    expect(folded.paper).toBeGreaterThan(folded.edges);
    expect(cut!.edges).toBeGreaterThan(0.9);
  });

  it("is not told of a piece that is read while walking round, nor of a cut that has no room", () => {
    const along = cornerKit({ fit: { view: "along" } }, SILHOUETTES[0]);
    expect(seenBothWays(along, cornerPattern(along))).toBeUndefined();
    const kit = cornerKit({}, SILHOUETTES[0]);
    const deep = {
      ...kit,
      levels: [
        { ...kit.levels[0]!, depth: 19 },
        { ...kit.levels[1]!, depth: 62 },
      ],
    };
    const wide = { ...deep, book: { ...deep.book, leafWidth: 130 } };
    expect(seenBothWays(wide, cornerPattern(wide))!.cut).toBeDefined();
    const narrow = {
      ...kit,
      levels: [
        { ...kit.levels[0]!, depth: 64 },
        { ...kit.levels[1]!, depth: 66 },
      ],
      fit: { ...kit.fit, corner: { ...kit.fit.corner, empty: "middle" as const } },
    };
    expect(seenBothWays(narrow, cornerPattern(narrow))!.cut).toBeUndefined();
  });

  it("counts joined levels as one, also where they are cut", () => {
    const levels = [10, 14, 20].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 2 }));
    const half = (level: number, left: number, right: number) => ({
      level,
      rule: "nonzero" as const,
      rings: [
        [
          [left, 20],
          [right, 20],
          [right, 80],
          [left, 80],
        ] as [number, number][],
      ],
    });
    const picture = { width: 100, height: 100, background: 3, shapes: [half(1, 10, 50), half(2, 50, 90)] };
    const joined = cornerKit({ levels, picture, fit: { corner: { levels: [1, 2], empty: "line", dropped: [] } } });
    const alone = cornerKit({ levels, picture });
    expect(seenBothWays(joined, cornerPattern(joined))!.folded.edges).toBeGreaterThan(0.97);
    expect(seenBothWays(alone, cornerPattern(alone))!.folded.edges).toBeGreaterThan(0.97);
    // Level 2 alone is wanted by neither; cut, it is seen where it is joined.
    const cut = computePattern(madeKit({ ...joined, fit: { ...joined.fit, foldStyle: "single" } }));
    if (!cut.fits) throw new Error("does not fit");
    expect(
      silhouetteSeen({ ...joined, fit: { ...joined.fit, foldStyle: "single" } }, cut.pattern)!.edges,
    ).toBeGreaterThan(0.9);
  });
});
