import type { Paper } from "../../output/views/paper.ts";

/** One PDF to print: a page of the built site, on a paper. */
export interface PrintJob {
  /** The page's file in the built site. */
  readonly page: string;
  /** What the page is of. */
  readonly of: PrintedPage;
  /** Pictures that the page shows. */
  readonly pictures: readonly string[];
  readonly paper: Paper;
  /** Sheets that are left out. */
  readonly without?: "strips";
  readonly target: string;
  readonly title: string;
  /** What stands at the foot of every page. */
  readonly footer: string;
}

/** A page that is printed, by what its author calls it. */
export interface PrintedPage {
  readonly kind: "kit" | "class";
  readonly slug: string;
  /** Of a class: the seat, where it is a seat's own page. */
  readonly seat?: number;
  /** As it stands in the site's address: `kits/<slug>/packet`. */
  readonly name: string;
}
