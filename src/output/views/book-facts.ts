import type { LeafPoint } from "../../core/corner/crease.ts";
import { flapsOf } from "../../core/corner/leaf-fold.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { AnyPattern, CornerPattern } from "../../core/pattern/corner-pattern.ts";
import { depthsOf, type Pattern } from "../../core/pattern/pattern.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import type { Fact } from "./figures.ts";

/** What a book needs to carry this kit as it is published; on its page, and not in its packet. */
export function bookFacts(kit: Kit, pattern: AnyPattern): Fact[] {
  const { book, fit } = pattern;
  const [before, after] = kit.fit.borderLeaves;
  const picture = fit.lastLeaf - fit.firstLeaf + 1;
  const inUnits = (mm: number): string => formatSize(mm, kit.units);
  return [
    {
      label: say.figureLeaves(),
      value: String(book.leaves),
      note: say.figureLeavesNote({ before, picture, after, needed: fit.lastLeaf + after }),
    },
    {
      label: say.figureHeight(),
      value: say.figureHeightLeast({ height: inUnits(fit.head + fit.height) }),
      note: say.figureHeightNote({ height: inUnits(book.leafHeight) }),
    },
    {
      label: say.figureWidth(),
      value: inUnits(book.leafWidth),
      note: pattern.corner
        ? say.cornerFigureWidthNote({ reach: inUnits(cornerReach(pattern)) })
        : say.figureWidthNote({ width: inUnits(flapReach(pattern) + kit.fit.gutterClearance) }),
    },
    { label: say.figureThickness(), value: inUnits(book.blockThickness), note: say.figureThicknessNote() },
  ];
}

/** How far the folded corners and leaves reach inward at most, mm. */
function cornerReach({ leaves }: CornerPattern): number {
  return Math.max(...leaves.flatMap(({ fold }) => flapsOf(fold).flatMap((flap) => flap.map(depthOf))));
}

function depthOf(of: number | LeafPoint): number {
  return typeof of === "number" ? of : of.depth;
}

/** How far a flap that lies behind its leaf reaches from the fore-edge, mm. */
function flapReach({ levels, fit }: Pattern): number {
  const front = levels[0]!.depth;
  const deepest = Math.max(...depthsOf(levels));
  return fit.foldStyle === "stepped" ? Math.max(2 * front, 2 * deepest - front) : 2 * deepest;
}
