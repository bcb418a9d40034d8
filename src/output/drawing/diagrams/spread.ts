import { type At, FAINT, PAPER, THIN } from "./ink.ts";
import type { Pen } from "./pen.ts";

/** A page of an opened book in a diagram, and how wide the opened book is. */
export const PAGE = { width: 17, top: 9, foot: 36 };
export const SPREAD = 36;

/** What stands on a page: its leaf, its printed number, and below them its pattern page. */
export interface PageLines {
  readonly top: readonly string[];
  readonly foot: string;
}

export const EMPTY: PageLines = { top: [], foot: "" };

/** An opened book from above: two pages, the one of the leaf in question tinted. */
export function spread(pen: Pen, left: PageLines, right: PageLines, own: "left" | "right"): string {
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
