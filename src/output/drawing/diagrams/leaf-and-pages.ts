import { type LeafNumber, leafNumber } from "../../../core/book/leaf-number.ts";
import { type LeafName, numberLeaves } from "../../../core/book/numbering.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { type Pattern, type PatternLeaf, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { leafName } from "../../../words/leaves.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { type At, diagram, FAINT, PAPER, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const PAGE = { width: 17, top: 9, foot: 36 };
const SPREAD = 36;

/** One leaf is two pages: the first picture leaf before and after it is turned, with its printed numbers and pattern page 1. */
export function leafAndPages(kit: Kit, pattern: Pattern): Figure {
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

function labelOf({ leaf, name }: PatternLeaf, front: string, back: string): string {
  return name.kind === "numbered"
    ? say.drawPages({ leaf, front, back })
    : say.drawPagesUnnumbered({ leaf, name: leafName(name) });
}

function sheetText({ leaf, name }: PatternLeaf, front: string, back: string): string {
  return name.kind === "numbered" ? say.drawPagesSheet({ leaf, front, back }) : say.drawPagesSheetUnnumbered({ leaf });
}

/** What stands on a page: its leaf, its printed number, and below them its pattern page. */
interface PageLines {
  readonly top: readonly string[];
  readonly foot: string;
}

const EMPTY: PageLines = { top: [], foot: "" };

function pageLines(leaf: LeafNumber, printed: string, patternPage: number | null = null): PageLines {
  return {
    top: [say.leafNumber({ leaf }), printed],
    foot: patternPage === null ? "" : say.drawPagesPattern({ page: patternPage }),
  };
}

/** An opened book from above: two pages, the one of the leaf in question tinted. */
function spread(pen: Pen, left: PageLines, right: PageLines, own: "left" | "right"): string {
  const edges = [1, 2].flatMap((step): At[][] => [
    [
      [1 - step * 0.7, PAGE.top + step * 0.7],
      [1 - step * 0.7, PAGE.foot + step * 0.7],
      [18, PAGE.foot + step * 0.7],
    ],
    [
      [35 + step * 0.7, PAGE.top + step * 0.7],
      [35 + step * 0.7, PAGE.foot + step * 0.7],
      [18, PAGE.foot + step * 0.7],
    ],
  ]);
  return [
    ...edges.map((edge) => pen.line(edge, FAINT)),
    page(pen, 1, left, own === "left"),
    page(pen, 18, right, own === "right"),
  ].join("");
}

function page(pen: Pen, x: number, { top, foot }: PageLines, tinted: boolean): string {
  const middle = x + PAGE.width / 2;
  const [fill, look] = tinted ? ([PAPER, THIN] as const) : (["#ffffff", FAINT] as const);
  return [
    pen.box([x, PAGE.top], [x + PAGE.width, PAGE.foot], fill, look),
    ...top.map((line, i) =>
      pen.words([middle, PAGE.top + 4.5 + i * 3.8], line, { anchor: "middle", bold: tinted && i === 0 }),
    ),
    foot === "" ? "" : pen.wrapped([middle, PAGE.top + 21.1], foot, PAGE.width, { anchor: "middle" }),
  ].join("");
}
