/** A card's colour. */
export interface Card {
  /** What people call it, in the author's words or in the site's. */
  readonly name: string;
  /** As a screen shows it: `#rrggbb`, small letters. */
  readonly colour: string;
}

/** How card is drawn whose colour the kit leaves to the maker. */
const USUAL = { door: "#3f6b70", motif: "#2b2930" } as const;

/** The colour that a piece of card is drawn in, in every picture of the window. */
export function cardColour(card: Card | undefined, use: keyof typeof USUAL): string {
  return card?.colour ?? USUAL[use];
}
