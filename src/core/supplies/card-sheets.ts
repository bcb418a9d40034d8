import type { Part } from "../window/part.ts";

/** Sheets of card of one colour; `colour` as people call it, undefined where any will do. */
export interface CardSheets {
  readonly colour: string | undefined;
  readonly count: number;
}

/** How many of some sheets, and of parts with a sheet for each, are of which colour; none where no colour is stated. */
export function cardSheets(cut: readonly Pick<Part, "card">[]): CardSheets[] {
  if (!cut.some(({ card }) => card)) return [];
  const colours = Map.groupBy(cut, ({ card }) => card?.name);
  return [...colours].map(([colour, own]) => ({ colour, count: own.length }));
}
