import type { Kit } from "../../core/kit/kit.ts";
import { depthsOf, type Pattern } from "../../core/pattern/pattern.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import type { Fact } from "./figures.ts";

/** What a book needs to carry this kit as it is published; on its page, and not in its packet. */
export function bookFacts(kit: Kit, pattern: Pattern): Fact[] {
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
      note: say.figureWidthNote({ width: inUnits(flapReach(pattern) + kit.fit.gutterClearance) }),
    },
    { label: say.figureThickness(), value: inUnits(book.blockThickness), note: say.figureThicknessNote() },
  ];
}

/** How far a flap that lies behind its leaf reaches from the fore-edge, mm. */
function flapReach({ levels, fit }: Pattern): number {
  const front = levels[0]!.depth;
  const deepest = Math.max(...depthsOf(levels));
  return fit.foldStyle === "stepped" ? Math.max(2 * front, 2 * deepest - front) : 2 * deepest;
}
