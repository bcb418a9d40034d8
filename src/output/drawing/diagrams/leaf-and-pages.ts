import { describeLeaf, type LeafName, numberLeaves } from "../../../core/book/numbering.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { type Pattern, pictureLeaves } from "../../../core/pattern/pattern.ts";
import type { Figure } from "../pocket-figure.ts";
import { type At, CUT, diagram, FAINT, PAPER } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const PAGE = { width: 17, top: 9, foot: 36 };
const SPREAD = 36;

/** One leaf is two pages: the first picture leaf before and after it is turned, with its printed numbers and pattern page 1. */
export function leafAndPages(kit: Kit, pattern: Pattern): Figure {
  const first = pictureLeaves(pattern)[0]!;
  const { nameOf } = numberLeaves(kit.book);
  const next = pattern.leaves.find((leaf) => leaf.leaf === first.leaf + 1);
  const [front, back] = printedPages(first.name);
  const before = first.leaf > 1 ? pageLines(first.leaf - 1, printedPages(nameOf(first.leaf - 1))[1]) : [];
  const after = next ? pageLines(next.leaf, printedPages(next.name)[0], next.patternPage) : [];
  const own = first.bookPage === null ? ` It is ${describeLeaf(first.name)}.` : "";
  const label = `One leaf is two pages. Pattern page 1 is leaf ${first.leaf} of the book: its front, the recto, is ${front}, its back, the verso, is ${back}.${own} Pattern pages count only fronts: 1, 3, 5 and so on.`;
  const sheet = `one sheet: leaf ${first.leaf} = ${first.bookPage === null ? "two pages without number" : `${front} and ${back}`}`;
  const lying = penFor(kit.book.direction, { left: 1, top: 0, width: SPREAD });
  const turned = penFor(kit.book.direction, { left: 43, top: 0, width: SPREAD });
  const words = penFor("ltr");
  return diagram(49, label, [
    words.words([19, 4], "its front, recto", { anchor: "middle", bold: true }),
    words.words([61, 4], "turned: its back, verso", { anchor: "middle", bold: true }),
    spread(lying, before, pageLines(first.leaf, front, first.patternPage), "right"),
    lying.arrow(27, PAGE.top + 17, 9, PAGE.top + 17, [18, PAGE.top + 7]),
    spread(turned, pageLines(first.leaf, back), after, "left"),
    words.arrow(38.1, 22, 42.1, 22),
    words.words([40, 42.5], sheet, { anchor: "middle", bold: true }),
    words.words([40, 47], `Pattern page 1 is leaf ${first.leaf}, page 3 the next leaf.`, { anchor: "middle" }),
  ]);
}

/** What is printed on front and back. */
function printedPages(name: LeafName): [string, string] {
  if (name.kind !== "numbered") return ["no number", "no number"];
  return [`p. ${name.recto}`, name.verso === null ? "no number" : `p. ${name.verso}`];
}

function pageLines(leaf: number, printed: string, patternPage: number | null = null): string[] {
  return [`leaf ${leaf}`, printed, ...(patternPage === null ? [] : ["pattern", `page ${patternPage}`])];
}

/** An opened book from above: two pages, the one of the leaf in question tinted. */
function spread(pen: Pen, left: readonly string[], right: readonly string[], own: "left" | "right"): string {
  const page = (x: number, lines: readonly string[], tinted: boolean): string =>
    pen.box([x, PAGE.top], [x + PAGE.width, PAGE.foot], tinted ? PAPER : "#ffffff", tinted ? CUT : FAINT) +
    lines
      .map((line, i) =>
        pen.words([x + PAGE.width / 2, PAGE.top + 4.5 + i * 3.8 + (i > 1 ? 9 : 0)], line, {
          anchor: "middle",
          bold: tinted && i === 0,
        }),
      )
      .join("");
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
    page(1, left, own === "left"),
    page(18, right, own === "right"),
  ].join("");
}
