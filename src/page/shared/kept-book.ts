import { bookFigures } from "../../core/finder/book-figures.ts";
import { fromAddress, toAddress } from "../../core/refit/address.ts";
import type { Refit } from "../../core/refit/refit.ts";

const KEY = "leaflight-book";

/** Keeps a book in this browser for other kits; says whether it could. */
export function keepBook(refit: Refit): boolean {
  try {
    localStorage.setItem(KEY, toAddress(bookFigures(refit)));
    return true;
  } catch {
    return false;
  }
}

/** Whether a book is kept. */
export function hasKeptBook(): boolean {
  return keptAddress() !== "";
}

/** The kept book, or undefined where there is none or the storage is closed. */
export function keptBook(): Refit | undefined {
  const address = keptAddress();
  return address === "" ? undefined : fromAddress(new URLSearchParams(address));
}

/** Empty where there is none or the storage is closed. */
function keptAddress(): string {
  try {
    return localStorage.getItem(KEY) ?? "";
  } catch {
    return "";
  }
}
