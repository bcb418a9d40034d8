import { leafNumber } from "../book/leaf-number.ts";
import { boardWidth, tipWidth } from "../fan/front.ts";
import { frontDepth } from "../kit/cut-kit.ts";
import type { Kit } from "../kit/kit.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import type { Face } from "./face.ts";
import type { Fit } from "./pattern.ts";

/** What the folds decide: the hold width (mm) and the resting opening (radians). */
export type FoldedWidths = Pick<Fit, "holdWidth" | "restingOpening">;

/** A kit matched to its book, with what its folds decide. */
export function describeFit<Style extends FoldStyle>(
  { book, fit, ...kit }: Kit,
  face: Face,
  foldStyle: Style,
  folded: FoldedWidths,
): Fit<Style> {
  return {
    firstLeaf: leafNumber(face.range.first + 1),
    lastLeaf: leafNumber(face.range.first + face.range.count),
    opening: face.solution.opening,
    spine: fit.spine,
    view: fit.view,
    head: face.head,
    height: face.solution.height,
    width: face.solution.width,
    stretch: face.solution.stretch,
    tipWidth: tipWidth(face.fan, face.range, frontDepth({ fit, levels: kit.levels })),
    boardWidth: boardWidth(face.fan, book.square, book.boardThickness),
    ...folded,
    foldStyle,
    markStep: fit.markStep,
    leastTab: fit.leastTab,
  };
}
