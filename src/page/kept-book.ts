import { fromAddress, toAddress } from "../refit/address.ts";
import type { Refit } from "../refit/refit.ts";

const KEY = "leaflight-book";

/** The figures of a book that hold for every kit. */
const BOOK_KEYS: readonly (keyof Refit)[] = [
  "leafHeight",
  "leafWidth",
  "blockThickness",
  "leaves",
  "pageOneLeaf",
  "lastPage",
  "plates",
  "direction",
];

/** Keeps a book in this browser for other kits; says whether it could. */
export function keepBook(refit: Refit): boolean {
  const book = Object.fromEntries(
    Object.entries(refit).filter(([key]) => BOOK_KEYS.includes(key as keyof Refit)),
  ) as Refit;
  try {
    localStorage.setItem(KEY, toAddress(book).toString());
    return true;
  } catch {
    return false;
  }
}

/** The kept book, or undefined where there is none or the storage is closed. */
export function keptBook(): Refit | undefined {
  try {
    const text = localStorage.getItem(KEY);
    return text ? fromAddress(new URLSearchParams(text)) : undefined;
  } catch {
    return undefined;
  }
}
