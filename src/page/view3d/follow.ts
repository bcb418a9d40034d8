import { once } from "../../core/lazily.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import { BOOK_CHANGED, shared } from "./shared.ts";

/** Hands the reader's own book to the view: an open one shows it at once, a closed one works it out when it is opened. */
export function showOwnBook(ready: () => Promise<void>, work: () => AnyKitView): void {
  const view = once(work);
  shared().own = {
    ready,
    get own() {
      return view();
    },
  };
  document.dispatchEvent(new Event(BOOK_CHANGED));
}
