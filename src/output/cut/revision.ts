import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { revisionOf } from "../../core/revision.ts";
import type { BookWindow } from "../../core/window/window.ts";

/**
 * A digest of what the window's parts follow from. Its record keeps the names and the order that the figures had when kits
 * were first published: a figure that is called otherwise in the program is no new revision of the parts.
 */
export function cutRevision(kit: Kit, pattern: Pattern, window: BookWindow): string {
  return revisionOf({ fit: fitRecord(pattern), wish: wishRecord(kit, window), light: kit.light, book: kit.book });
}

function fitRecord({ fit }: Pattern): Record<string, unknown> {
  return {
    firstLeaf: fit.firstLeaf,
    lastLeaf: fit.lastLeaf,
    opening: fit.opening,
    spine: fit.spine,
    view: fit.view,
    head: fit.head,
    height: fit.height,
    width: fit.width,
    stretch: fit.stretch,
    holdWidth: fit.tipWidth,
    edgeWidth: fit.holdWidth,
    boardWidth: fit.boardWidth,
    restingOpening: fit.restingOpening,
    foldStyle: fit.foldStyle,
    markStep: fit.markStep,
    leastTab: fit.leastTab,
  };
}

function wishRecord(kit: Kit, { wish }: BookWindow): Record<string, unknown> {
  const { outline, lip, hinge, panel } = wish;
  return { outline, outlineName: kit.levels[outline - 1]!.name, lip, hinge, panel };
}
