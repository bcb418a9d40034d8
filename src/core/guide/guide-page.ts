import type { ReferenceName } from "./reference.ts";

/** A chapter is read in order; a reference is looked up. */
export const GUIDE_KINDS = ["chapter", "reference"] as const;

/** A page of the guide, as its file states it. */
export interface GuidePage {
  /** The file's name without its ending: the page's address below the guide. */
  readonly name: string;
  readonly title: string;
  /** One line about the page. */
  readonly summary: string;
  readonly kind: (typeof GUIDE_KINDS)[number];
  /** Language of its words (BCP 47): the site's, or English where the site's has no such page. */
  readonly language: string;
  readonly passages: readonly GuidePassage[];
}

/** Drawings that a page may show, with the figures of one of the site's kits: how a book is measured, how a leaf is read. */
export const GUIDE_FIGURES = ["measure", "leaf"] as const;

export type GuideFigure = (typeof GUIDE_FIGURES)[number];

/** What a page is made of, in order: an author's Markdown, tables of keys that come from the schemas, and drawings. */
export type GuidePassage =
  | { readonly markdown: string }
  | { readonly reference: ReferenceName }
  | { readonly figure: GuideFigure };
