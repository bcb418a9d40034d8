import type { Dual } from "../../words/dual.ts";
import type { Fact } from "../views/figures.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** Figures with their names. `show` writes a value: in both unit systems on a page, in one on paper. */
export function factList(
  facts: readonly Fact[],
  kind: "figures" | "figures wide",
  show: (value: Dual) => Markup,
): Html {
  const items = facts.map(
    ({ label, value, note }) =>
      html`<div><dt>${label}</dt><dd>${show(value)}<span class="note">${note}</span></dd></div>`,
  );
  return html`<dl class="${kind}">${items}</dl>`;
}
