import type { Level } from "../../core/kit/kit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { unitName } from "../../words/units.ts";
import type { KitView } from "../views/kit-view.ts";
import type { NotchText, Row } from "../views/row.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";
import { readingPart } from "./reading.ts";

type PatternPage = Pick<KitView, "kit" | "pattern" | "reading" | "rows" | "merged">;

/** The table of all leaves, with what is needed to read it. */
export function patternPart(view: PatternPage): Html {
  return html`<p>${introduction(view)}</p>
<ul class="levels">${view.pattern.levels.map((level, i) => html`<li>${levelWords(level, i + 1, view.kit.units)}</li>`)}</ul>
${readingPart(view)}
${leavesTable(say.kitTableCaption({ title: view.kit.title }), view.rows)}
${merged(view)}`;
}

/** The table of these leaves; its caption is for readers of the screen. */
export function leavesTable(caption: string, rows: readonly Row[]): Html {
  return html`<table class="pattern">
<caption class="sr">${caption}</caption>
<thead><tr>${heads().map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${rows.map(tableRow)}
</tbody>
</table>`;
}

function introduction({ kit, pattern }: PatternPage): Html {
  const words = {
    marks: html`<strong>${say.kitTableMarks()}</strong>`,
    cut: html`<strong>${say.kitTableCut()}</strong>`,
    folds: html`<strong>${say.kitTableFolds()}</strong>`,
    units: unitName(kit.units),
  };
  return pattern.fit.foldStyle === "stepped"
    ? rich(say.kitTableTextStepped, { ...words, level: pattern.levels[0]!.name })
    : rich(say.kitTableText, words);
}

function levelWords({ name, line, depth, background }: Level, number: number, units: UnitSystem): Html {
  const words = {
    number: html`<b>${number}</b>`,
    name,
    depth: formatSize(depth, units),
    background: background ? "yes" : "no",
  };
  return line === undefined ? rich(say.kitLevel, words) : rich(say.kitLevelLine, { ...words, line });
}

function heads(): string[] {
  return [say.tableLeaf(), say.tablePatternPage(), say.tableBookPage(), say.tableMarks(), say.tableFolds()];
}

function tableRow(row: Row): Html {
  const { marks, notch } = row;
  const kind = row.checkpoint ? html` class="checkpoint"` : row.border && html` class="border"`;
  return html`
<tr${kind}><th scope="row">${row.leaf}</th><td>${row.patternPage || say.tableBorder()}</td><td>${row.bookPage}</td><td>${
    marks.length > 0 ? markList(marks) : say.tableWhole()
  }${notch && notchWords(notch)}${
    row.checkpoint && html`<span class="check">${say.kitTableCheckpoint()}</span>`
  }</td><td>${row.folds.join(" · ")}</td></tr>`;
}

function markList(marks: Row["marks"]): Markup {
  return marks.map(({ at, cut }) => html`<i>${at}<u>›${cut}</u></i> `);
}

function notchWords(notch: NotchText): Html {
  return html`<span class="notch">${say.kitTableNotch({ notch: say.kitTableNotchPlace(notch) })}</span>`;
}

function merged({ merged }: PatternPage): Markup {
  if (merged.length === 0) return false;
  const items = merged.map(
    ({ leaf, place, level, into }) => html`<li>${rich(say.kitMergedStrip, { leaf, place: place, level, into })}</li>`,
  );
  return html`<details><summary>${say.kitMerged({ count: merged.length })}</summary>
<p>${say.kitMergedText()}</p>
<ul class="columns">${items}</ul></details>`;
}
