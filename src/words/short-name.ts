/** Names up to this stand whole everywhere, in letters. */
const WHOLE = 24;

/** A name where room is short, in a drawing or above a table; its whole stands in the kit's lists. */
export function shortName(name: string): string {
  const letters = [...name];
  return letters.length <= WHOLE
    ? name
    : `${letters
        .slice(0, WHOLE - 1)
        .join("")
        .trimEnd()}…`;
}
