import type { Fact } from "../views/figures.ts";
import { type Html, html } from "./markup.ts";

/** Figures with their names. */
export function factList(facts: readonly Fact[], kind: "figures" | "figures wide"): Html {
  const items = facts.map(
    ({ label, value, note }) => html`<div><dt>${label}</dt><dd>${value}<span class="note">${note}</span></dd></div>`,
  );
  return html`<dl class="${kind}">${items}</dl>`;
}
