import type { KitView } from "../views/kit-view.ts";
import { type Html, raw } from "./markup.ts";

/** What is measured on a book. */
export function measurePart({ measuring }: Pick<KitView, "measuring">): Html {
  return raw(measuring.svg);
}
