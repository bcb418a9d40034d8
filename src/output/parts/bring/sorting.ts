import type { BroughtDrawing } from "../../../core/beginning/brought.ts";
import type { Marked } from "../../../core/beginning/picture-wish.ts";
import { listText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { percentText } from "../../../words/numbers.ts";
import { type Html, html } from "../markup.ts";
import { select } from "./controls.ts";
import { levelSelect } from "./parting.ts";

/** A drawing’s controls. */
export interface SortingShown {
  readonly sortings: BroughtDrawing["sortings"];
  /** Which of them is taken, from 0. */
  readonly taken: number | undefined;
  readonly marks: readonly Marked[];
}

/** Names of a way that are told. */
const TOLD = 3;

/** More levels than these show nowhere well. */
const MOST_LEVELS = 7;

export function sortingPart({ sortings, taken, marks }: SortingShown): Html {
  const options = sortings.map((sorting, i) => ({ value: String(i), label: sortingName(sorting) }));
  const all = [...options, { value: "", label: say.deskNewSortedNot() }];
  const shares = taken === undefined ? [] : sortings[taken]!.shares;
  const most = Math.max(2, Math.min(MOST_LEVELS, marks.length), ...marks.map(({ level }) => level));
  const rows = marks.map(({ name, selector, level }, i) => {
    const colour = typeof selector === "string" ? undefined : "fill" in selector ? selector.fill : selector.stroke;
    return html`<li data-mark="${i}">${swatch(colour)}<span class="bring-mark-name">${say.deskNewMark({ name, share: percentText(shares[i] ?? 0) })}</span>${levelSelect(i, name, level, most)}</li>
`;
  });
  return html`${select("sorting", say.deskNewSortedBy(), all, taken === undefined ? "" : String(taken))}
${rows.length > 0 && html`<ul class="bring-marks" aria-label="${say.deskNewMarks()}">${rows}</ul><p class="hint">${say.deskNewPress()}</p>`}`;
}

function sortingName({ by, marks }: BroughtDrawing["sortings"][number]): string {
  if (by === "colours") return say.deskNewSortedColours();
  const names = marks.slice(0, TOLD).map(({ name }) => name);
  return say.deskNewSortedNames({ names: marks.length > TOLD ? `${names.join(", ")} …` : listText(names) });
}

function swatch(colour: string | undefined): Html {
  if (colour === undefined) return html``;
  return html`<svg class="bring-swatch" viewBox="0 0 10 10" aria-hidden="true"><rect width="10" height="10" fill="${colour}"/></svg>`;
}
