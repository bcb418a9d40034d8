import type { Point } from "../../core/geometry/point.ts";
import { tidy } from "../../core/units/length.ts";
import { isMotif } from "../../core/window/motif.ts";
import { type Part, sizeOfPart } from "../../core/window/part.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { markText } from "../../words/parts.ts";

/** The window as it is published: points to 0.001 mm, areas to 0.01 mm². */
export function windowJson(window: BookWindow): Record<string, unknown> {
  const { lip, hinge, panel } = window.wish;
  return {
    lip: tidy(lip),
    hinge,
    panel,
    stringLength: tidy(window.stringLength, 1),
    frameLength: tidy(window.frameLength, 2),
    parts: partsOf(window).map(partJson),
  };
}

/** `name` is the part's id in words, the same in every language. */
function partJson(part: Part): Record<string, unknown> {
  const size = sizeOfPart(part);
  return {
    id: part.id,
    kind: part.kind,
    name: part.id.replaceAll("-", " "),
    material: part.material,
    ...(part.card ? { card: { ...part.card } } : {}),
    count: part.count,
    frame: part.frame,
    outlines: part.outlines.map(pointsJson),
    scores: part.scores.map(pointsJson),
    marks: part.marks.map((mark) => ({ line: pointsJson(mark.line), label: markText(mark.kind) })),
    width: tidy(size.width, 3),
    height: tidy(size.height, 3),
    area: tidy(size.area, 2),
    perimeter: tidy(size.perimeter, 2),
    ...(isMotif(part) ? { seat: pointsJson([part.seat])[0], spacers: part.spacers } : {}),
  };
}

function pointsJson(line: readonly Point[]): number[][] {
  return line.map(([x, y]) => [tidy(x, 3), tidy(y, 3)]);
}
