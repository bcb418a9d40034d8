import type { KitView } from "../../output/views/kit-view.ts";
import { BOOK_CHANGED, shared } from "./shared.ts";

/** Hands the reader's own book to the view: an open one shows it at once, a closed one when it is opened. */
export function showOwnBook(view: KitView): void {
  shared().data = { own: view };
  document.dispatchEvent(new Event(BOOK_CHANGED));
}
