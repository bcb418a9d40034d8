import type { Paper } from "../../output/views/paper.ts";

/** One PDF to print: a page of the built site, on a paper. */
export interface PrintJob extends FootedPaper {
  /** The page's file in the built site. */
  readonly page: string;
  /** What the page is of. */
  readonly of: PrintedPage;
  /** Pictures that the page shows. */
  readonly pictures: readonly string[];
  /** How the page is changed before it is printed. */
  readonly edition?: Edition;
  readonly target: string;
  readonly title: string;
  /** Both papers of this edition, where it has two: they come from one printing, whichever is asked for. */
  readonly both?: readonly [FootedPaper, FootedPaper];
}

/** A packet without its strips for the bench, or the large table in short. */
export type Edition = "bench" | "short";

/** A paper, and what stands at the foot of every page on it. */
export interface FootedPaper {
  readonly paper: Paper;
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
