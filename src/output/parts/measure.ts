import type { KitViewBase } from "../views/kit-view.ts";
import { drawnOnce } from "./drawn-once.ts";
import type { Html } from "./markup.ts";

/** What is measured on a book. */
export function measurePart({ measuring }: Pick<KitViewBase, "measuring">): Html {
  return drawnOnce(measuring, "drawn-book");
}
