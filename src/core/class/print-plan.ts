import type { KitClass } from "./kit-class.ts";

/** A file that a class is printed from, and how many pages it has. */
export interface CountedFile {
  readonly file: PlannedFile;
  readonly pages: number;
}

/** In the order in which they are printed. */
export const PLANNED_FILES = ["measuring-card", "teacher", "to-read", "to-cut-out"] as const;

export type PlannedFile = (typeof PLANNED_FILES)[number];

/** A file with what printing it takes. */
export interface PrintRow extends CountedFile {
  readonly copies: number;
  readonly bothSides: boolean;
  readonly stock: "paper" | "card";
  /** Printed sides and sheets of all copies. */
  readonly sides: number;
  readonly sheets: number;
  /** In the class's currency; undefined where no price is stated. */
  readonly cost: number | undefined;
}

export interface PrintPlan {
  readonly rows: readonly PrintRow[];
  readonly sides: number;
  readonly paper: number;
  readonly card: number;
  readonly cost: number | undefined;
}

/** Measuring cards on a page. */
const CARDS_A_PAGE = 2;

/** What is printed how often, counted from the files themselves: what is read on both sides of paper, what is cut out on one side of card. */
export function printPlanOf(
  { awaiting, pagePrice }: Pick<KitClass, "awaiting" | "pagePrice">,
  files: readonly CountedFile[],
): PrintPlan {
  const rows = PLANNED_FILES.flatMap((name) => files.filter(({ file }) => file === name)).flatMap((one) => {
    const copies = one.file === "measuring-card" ? Math.ceil(awaiting.length / CARDS_A_PAGE) : 1;
    return copies > 0 && one.pages > 0 ? [rowOf(one, copies, pagePrice)] : [];
  });
  const sum = (of: (row: PrintRow) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const sides = sum((row) => row.sides);
  return {
    rows,
    sides,
    paper: sum(({ stock, sheets }) => (stock === "paper" ? sheets : 0)),
    card: sum(({ stock, sheets }) => (stock === "card" ? sheets : 0)),
    cost: costOf(sides, pagePrice),
  };
}

function rowOf({ file, pages }: CountedFile, copies: number, pagePrice: number | undefined): PrintRow {
  const bothSides = file === "teacher" || file === "to-read";
  const sides = pages * copies;
  return {
    file,
    pages,
    copies,
    bothSides,
    stock: file === "to-cut-out" ? "card" : "paper",
    sides,
    sheets: (bothSides ? Math.ceil(pages / 2) : pages) * copies,
    cost: costOf(sides, pagePrice),
  };
}

/** To the hundredth. */
function costOf(sides: number, pagePrice: number | undefined): number | undefined {
  return pagePrice === undefined ? undefined : Math.round(sides * pagePrice * 100) / 100;
}
