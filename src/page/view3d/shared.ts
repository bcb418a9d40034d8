import type { RoundData } from "../../output/data/round-data.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";

/** What the view is made from: a published pattern, or a book that the page has worked out. */
export type RoundSource = RoundData | OwnBook;

/** A reader’s book: `own` is worked out when it is asked for, once `ready` was waited. */
export interface OwnBook {
  /** Fetches what works it out. @throws LoadError */
  readonly ready: () => Promise<void>;
  readonly own: AnyKitView;
}

/** What the scripts of the view hand to each other: each is fetched on its own, and only when the reader asks. */
export interface RoundShared {
  /** Set by the page's round-data.js: the kit's own book. */
  data?: RoundData;
  /** The reader's book as the page shows it; it comes before the kit's, whichever is there first. */
  own?: OwnBook;
  /** Set by round-view.js: fills the stage and gives back what closes it. @throws Error where the picture cannot be drawn */
  show?: (stage: HTMLElement, template: HTMLTemplateElement, data: RoundSource) => () => void;
}

/** Told to the document when the page shows the kit on another book. */
export const BOOK_CHANGED = "leaflight:book";

declare global {
  var leaflightRound: RoundShared | undefined;
}

/** What the view is made from now; undefined until something is there. */
export function roundSource(): RoundSource | undefined {
  return shared().own ?? shared().data;
}

export function shared(): RoundShared {
  globalThis.leaflightRound ??= {};
  return globalThis.leaflightRound;
}
