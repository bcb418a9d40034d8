import * as say from "../../words/messages.ts";

/** Card that craft shops have: what authors call it, and how a screen shows it. */
const COLOURS = {
  white: "#f6f3ec",
  cream: "#efe3c8",
  sand: "#cfb68a",
  yellow: "#e6b93f",
  orange: "#cf7a35",
  red: "#a63a33",
  pink: "#d39aa2",
  violet: "#6a567f",
  blue: "#35577f",
  night: "#1f2a3f",
  teal: "#3f6b70",
  green: "#55714a",
  brown: "#6b4c37",
  grey: "#7f807c",
  black: "#2b2930",
} as const;

export type CardName = keyof typeof COLOURS;

export const CARD_NAMES = Object.keys(COLOURS) as [CardName, ...CardName[]];

/** A named colour for a screen, `#rrggbb`. */
export function namedColour(name: CardName): string {
  return COLOURS[name];
}

/** What people call a named colour of card, before the word for card. */
export function cardWord(name: CardName): string {
  return say.cardColour({ name });
}
