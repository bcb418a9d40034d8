import type { Kit } from "../../core/kit/kit.ts";
import { depthsOf, type Pattern } from "../../core/pattern/pattern.ts";
import { dual, dualDepth, same } from "../../words/dual.ts";
import * as say from "../../words/messages.ts";
import type { Fact } from "./figures.ts";

/** What a book needs to carry this kit as it is published; on its page, and not in its packet. */
export function bookFacts(kit: Kit, pattern: Pattern): Fact[] {
  const { book, fit } = pattern;
  const [before, after] = kit.fit.borderLeaves;
  const picture = fit.lastLeaf - fit.firstLeaf + 1;
  const inUnits = (mm: number): string => dualDepth(mm)[kit.units];
  return [
    {
      label: say.figureLeaves(),
      value: same(String(book.leaves)),
      note: say.figureLeavesNote({ before, picture, after, needed: fit.lastLeaf + after }),
    },
    {
      label: say.figureHeight(),
      value: dual((units) => say.figureHeightLeast({ height: dualDepth(fit.head + fit.height)[units] })),
      note: say.figureHeightNote({ height: inUnits(book.leafHeight) }),
    },
    {
      label: say.figureWidth(),
      value: dualDepth(book.leafWidth),
      note: say.figureWidthNote({ width: inUnits(flapReach(pattern) + kit.fit.gutterClearance) }),
    },
    { label: say.figureThickness(), value: dualDepth(book.blockThickness), note: say.figureThicknessNote() },
  ];
}

/** How far a flap that lies behind its leaf reaches from the fore-edge, mm. */
function flapReach({ levels, fit }: Pattern): number {
  const front = levels[0]!.depth;
  const deepest = Math.max(...depthsOf(levels));
  return fit.foldStyle === "stepped" ? Math.max(2 * front, 2 * deepest - front) : 2 * deepest;
}
