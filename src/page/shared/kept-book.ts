import { bookFigures } from "../../core/finder/book-figures.ts";
import { type AddressRead, fromAddress, toAddress } from "../../core/refit/address.ts";
import type { Refit } from "../../core/refit/refit.ts";
import { BOOK_KEY, keptAddress } from "./kept-address.ts";

/** Keeps a book in this browser for other kits; says whether it could. */
export function keepBook(refit: Refit): boolean {
  try {
    localStorage.setItem(BOOK_KEY, toAddress(bookFigures(refit)));
    return true;
  } catch {
    return false;
  }
}

/** The kept book, or undefined where there is none or the storage is closed. */
export function keptBook(): AddressRead | undefined {
  const address = keptAddress();
  return address === "" ? undefined : fromAddress(new URLSearchParams(address));
}
