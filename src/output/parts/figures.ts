import * as say from "../../words/messages.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { factList } from "./facts.ts";
import { type Html, html, rich } from "./markup.ts";

/** What a kit's page shows first: the figures that kits are compared by, and a line on the kind of work. */
export function figuresPart(view: Pick<KitViewBase, "figures" | "difficulty" | "pattern">): Html {
  return html`${factList(view.figures.key, "figures")}
<p class="tagline">${tagline(view)}</p>`;
}

/** `easy · stepped folds · opening 60° · reads left to right` */
export function tagline({
  figures,
  difficulty,
  pattern,
}: Pick<KitViewBase, "figures" | "difficulty" | "pattern">): Html {
  return rich(say.kitTagline, {
    difficulty: html`<strong>${difficulty}</strong>`,
    folds: pattern.fit.foldStyle,
    opening: figures.opening,
    direction: pattern.book.direction,
  });
}
