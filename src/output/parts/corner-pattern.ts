import * as say from "../../words/messages.ts";
import { unitName } from "../../words/units.ts";
import type { CornerRow, CreaseText } from "../views/corner-row.ts";
import type { CornerView } from "../views/corner-view.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";
import { readingPart } from "./reading.ts";

type PatternPage = Pick<CornerView, "kit" | "pattern" | "reading" | "rows" | "merged">;

/** The table of all leaves whose corners are folded, with what is needed to read it. */
export function cornerPatternPart(view: PatternPage): Html {
  return html`<p>${introduction(view)}</p>
${readingPart(view)}
${cornerTable(say.kitTableCaption({ title: view.kit.title }), view.rows)}
${merged(view)}`;
}

/** The table of these leaves; its caption is for readers of the screen. */
export function cornerTable(caption: string, rows: readonly CornerRow[]): Html {
  const turns = rows.some(({ turn }) => turn !== "");
  const heads = [
    say.tableLeaf(),
    say.tablePatternPage(),
    say.tableBookPage(),
    say.cornerTableUpper(),
    say.cornerTableLower(),
    ...(turns ? [say.cornerTableTurn()] : []),
  ];
  return html`<table class="pattern corners">
<caption class="sr">${caption}</caption>
<thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${rows.map((row) => tableRow(row, turns))}
</tbody>
</table>`;
}

function introduction({ kit, pattern: { corner } }: PatternPage): Html {
  const marks = html`<strong>${say.cornerTableMarks()}</strong>`;
  const more = [
    ...(corner.turned > 0 ? [say.cornerTableTurned()] : []),
    ...(corner.turns.leaves > 0 ? [say.cornerTableTurns({ of: corner.turns.most })] : []),
  ];
  return html`${rich(say.cornerTableText, { marks, units: unitName(kit.units) })}${more.map((one) => ` ${one}`)}`;
}

function tableRow(row: CornerRow, turns: boolean): Html {
  const kind = row.checkpoint ? html` class="checkpoint"` : row.border && html` class="border"`;
  const check = row.checkpoint && html`<span class="check">${say.kitTableCheckpoint()}</span>`;
  const pages = html`<th scope="row">${row.leaf}</th><td>${row.patternPage || say.tableBorder()}</td><td>${row.bookPage}</td>`;
  const folds =
    row.kind === "corners"
      ? html`<td data-label="${say.cornerTableUpper()}">${creaseWords(row.upper)}${check}</td><td data-label="${say.cornerTableLower()}">${creaseWords(row.lower)}</td>`
      : html`<td colspan="2">${emptyWords(row)}${check}</td>`;
  return html`
<tr${kind}>${pages}${folds}${turns && html`<td data-label="${say.cornerTableTurn()}">${row.turn}</td>`}</tr>`;
}

/** A mark, with the end of a steeper crease. */
export function creaseWords(crease: CreaseText | undefined): Markup {
  if (!crease) return say.cornerTableNone();
  return html`<i>${crease.at}${crease.end !== "" && html` <u>${say.cornerCreaseEnd({ end: crease.end })}</u>`}</i>`;
}

/** How a leaf is folded that shows nothing. */
export function emptyWords({ kind, upper, lower }: CornerRow): string {
  return kind === "middle" ? say.cornerTableMiddle({ at: (upper ?? lower)?.at ?? "" }) : say.cornerTableWhole();
}

function merged({ merged }: PatternPage): Markup {
  if (merged.length === 0) return false;
  const items = merged.map(({ leaf, place }) => html`<li>${rich(say.cornerMergedStrip, { leaf, place })}</li>`);
  return html`<details><summary>${say.kitMerged({ count: merged.length })}</summary>
<p>${say.cornerMergedText()}</p>
<ul class="columns">${items}</ul></details>`;
}
