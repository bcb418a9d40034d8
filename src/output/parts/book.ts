import * as say from "../../words/messages.ts";
import { bookFacts } from "../views/book-facts.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { factList } from "./facts.ts";
import { type Html, html } from "./markup.ts";

/** What a book needs to carry the kit as it is published. */
export function bookPart({ kit, pattern }: Pick<KitViewBase, "kit" | "pattern">): Html {
  return html`<p>${say.kitBookText()}</p>
${factList(bookFacts(kit, pattern), "figures wide")}`;
}
