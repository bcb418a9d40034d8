import type { Hurdle } from "../../../core/beginning/brought.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";

/** The numbers that matter, and what is noted. */
export function bringSlip(
  figures: readonly (readonly [label: string, value: string])[],
  findings: readonly string[],
  notes: readonly string[],
): Html {
  return html`<dl class="slip-figures">${figures.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>
${findings.map((one) => html`<p class="finding">${one}</p>`)}
${notes.length > 0 && html`<details class="more-found"><summary>${say.deskNewNotes()}</summary><ul>${notes.map((one) => html`<li>${one}</li>`)}</ul></details>`}`;
}

/** What is in the way, each with what to do. */
export function hurdlesPart(hurdles: readonly Hurdle[]): Html {
  const items = hurdles.map(({ place, given, allowed, remedy }) => {
    const what = place === undefined ? given : say.deskNewHurdle({ place, given });
    return html`<li>${what}${allowed !== "" && html` <span class="note">${say.deskNewHurdleWay({ allowed, remedy })}</span>`}</li>`;
  });
  return html`<h2>${say.deskNewHurdles()}</h2><ul>${items}</ul>`;
}
