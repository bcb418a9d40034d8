export const BOOK_KEY = "leaflight-book";

/** The book that this browser keeps, as an address has it; empty where there is none or the storage is closed. */
export function keptAddress(): string {
  try {
    return localStorage.getItem(BOOK_KEY) ?? "";
  } catch {
    return "";
  }
}
