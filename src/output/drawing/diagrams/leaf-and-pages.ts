import { type LeafNumber, leafNumber } from "../../../core/book/leaf-number.ts";
import { type LeafName, numberLeaves } from "../../../core/book/numbering.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { type PatternBase, type PatternLeafBase, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { leafName } from "../../../words/leaves.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { diagram } from "./ink.ts";
import { penFor } from "./pen.ts";
import { EMPTY, PAGE, type PageLines, SPREAD, spread } from "./spread.ts";

/** One leaf is two pages: the first picture leaf before and after it is turned, with its printed numbers and pattern page 1. */
export function leafAndPages(kit: Kit, pattern: Pick<PatternBase, "leaves">): Figure {
  const first = pictureLeaves(pattern)[0]!;
  const { leaf } = first;
  const { nameOf } = numberLeaves(kit.book);
  const next = pattern.leaves.find((one) => one.leaf === leaf + 1);
  const previous = leafNumber(leaf - 1);
  const [front, back] = printedPages(first.name);
  const before = leaf > 1 ? pageLines(previous, printedPages(nameOf(previous))[1]) : EMPTY;
  const after = next ? pageLines(next.leaf, printedPages(next.name)[0], next.patternPage) : EMPTY;
  const lying = penFor(kit.book.direction, { left: 1, top: 0, width: SPREAD });
  const turned = penFor(kit.book.direction, { left: 43, top: 0, width: SPREAD });
  const words = penFor("ltr");
  return diagram(49, labelOf(first, front, back), [
    words.words([19, 4], say.drawPagesFront(), { anchor: "middle", bold: true, room: SPREAD + 2 }),
    words.words([61, 4], say.drawPagesBack(), { anchor: "middle", bold: true, room: SPREAD + 2 }),
    spread(lying, before, pageLines(leaf, front, first.patternPage), "right"),
    lying.arrow(27, PAGE.top + 17, 9, PAGE.top + 17, [18, PAGE.top + 7]),
    spread(turned, pageLines(leaf, back), after, "left"),
    words.arrow(38.1, 22, 42.1, 22),
    words.words([40, 42.5], sheetText(first, front, back), { anchor: "middle", bold: true }),
    words.words([40, 47], say.drawPagesFirst({ leaf }), { anchor: "middle" }),
  ]);
}

/** What is printed on front and back. */
function printedPages(name: LeafName): [string, string] {
  const page = (number: number | null): string =>
    number === null ? say.drawPagesNoNumber() : say.leafPage({ page: number });
  return name.kind === "numbered" ? [page(name.recto), page(name.verso)] : [page(null), page(null)];
}

function labelOf({ leaf, name }: PatternLeafBase, front: string, back: string): string {
  return name.kind === "numbered"
    ? say.drawPages({ leaf, front, back })
    : say.drawPagesUnnumbered({ leaf, name: leafName(name) });
}

function sheetText({ leaf, name }: PatternLeafBase, front: string, back: string): string {
  return name.kind === "numbered" ? say.drawPagesSheet({ leaf, front, back }) : say.drawPagesSheetUnnumbered({ leaf });
}

function pageLines(leaf: LeafNumber, printed: string, patternPage: number | null = null): PageLines {
  return {
    top: [say.leafNumber({ leaf }), printed],
    foot: patternPage === null ? "" : say.drawPagesPattern({ page: patternPage }),
  };
}
