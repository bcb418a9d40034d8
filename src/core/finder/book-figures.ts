import { OF_A_BOOK, type Refit } from "../refit/refit.ts";

/** What hangs on the count of leaves. */
const OF_THE_COUNT: readonly (keyof Refit)[] = ["pageOneLeaf", "lastPage", "plates"];

/** The figures that the finder asks for, in order. */
export const ASKED = ["leafHeight", "leafWidth", "blockThickness", "leaves"] as const satisfies (keyof Refit)[];

export type Asked = (typeof ASKED)[number];

/** The book of a refit, without what is a kit's own: borders, depths, folds, light. */
export function bookFigures(refit: Refit): Refit {
  return pick(refit, (key) => (OF_A_BOOK as readonly string[]).includes(key));
}

/**
 * A book with the figures that are now written for it in fields for `shown`. With another count of leaves it is another book:
 * page numbers that no field shows go.
 */
export function restateBook(book: Refit, written: Refit, shown: readonly (keyof Refit)[] = ASKED): Refit {
  const sameCount = book.leaves === written.leaves;
  const rest = pick(book, (key) => !shown.includes(key) && (sameCount || !OF_THE_COUNT.includes(key)));
  return { ...written, ...rest };
}

function pick(refit: Refit, wanted: (key: keyof Refit) => boolean): Refit {
  return Object.fromEntries(
    Object.entries(refit).filter(([key, value]) => value !== undefined && wanted(key as keyof Refit)),
  );
}
