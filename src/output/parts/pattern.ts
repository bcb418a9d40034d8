import type { Level } from "../../core/kit/kit.ts";
import { type Dual, dualDepth } from "../../words/dual.ts";
import * as say from "../../words/messages.ts";
import { unitName } from "../../words/units.ts";
import { type DualRow, dualRows } from "../views/dual-rows.ts";
import type { KitView } from "../views/kit-view.ts";
import type { NotchText, Row } from "../views/row.ts";
import { dual } from "./dual.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";
import { readingPart } from "./reading.ts";

type PatternPage = Pick<KitView, "kit" | "pattern" | "reading" | "rows" | "merged">;

/** The table of all leaves, with what is needed to read it. */
export function patternPart(view: PatternPage): Html {
  return html`<p>${introduction(view)}</p>
<ul class="levels">${view.pattern.levels.map((level, i) => html`<li>${levelWords(level, i + 1)}</li>`)}</ul>
${readingPart(view)}
${leavesTable(say.kitTableCaption({ title: view.kit.title }), dualRows(view.kit, view.pattern, view.rows))}
${merged(view)}`;
}

/** The table of these leaves; its caption is for readers of the screen. */
export function leavesTable(caption: string, rows: readonly DualRow[]): Html {
  return html`<table class="pattern">
<caption class="sr">${caption}</caption>
<thead><tr>${heads().map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${rows.map(tableRow)}
</tbody>
</table>`;
}

function introduction({ pattern }: PatternPage): Html {
  const words = {
    marks: html`<strong>${say.kitTableMarks()}</strong>`,
    cut: html`<strong>${say.kitTableCut()}</strong>`,
    folds: html`<strong>${say.kitTableFolds()}</strong>`,
    units: dual({ mm: unitName("mm"), in: unitName("in") }),
  };
  return pattern.fit.foldStyle === "stepped"
    ? rich(say.kitTableTextStepped, { ...words, level: pattern.levels[0]!.name })
    : rich(say.kitTableText, words);
}

function levelWords({ name, line, depth, background }: Level, number: number): Html {
  const words = {
    number: html`<b>${number}</b>`,
    name,
    depth: dual(dualDepth(depth)),
    background: background ? "yes" : "no",
  };
  return line === undefined ? rich(say.kitLevel, words) : rich(say.kitLevelLine, { ...words, line });
}

function heads(): string[] {
  return [say.tableLeaf(), say.tablePatternPage(), say.tableBookPage(), say.tableMarks(), say.tableFolds()];
}

function tableRow({ row, marks, folds, sameFolds, notch }: DualRow): Html {
  const kind = row.checkpoint ? html` class="checkpoint"` : row.border && html` class="border"`;
  const marked = marks.mm.length > 0 || marks.in.length > 0;
  return html`
<tr${kind}><th scope="row">${row.leaf}</th><td class="pattern-page" data-label="${say.tablePatternPage()}">${row.patternPage || say.tableBorder()}</td><td data-label="${say.tableBookPage()}">${row.bookPage}</td><td class="marks">${
    marked ? inBoth(marks, markList) : say.tableWhole()
  }${notch && notchWords(notch)}${
    row.checkpoint && html`<span class="check">${say.kitTableCheckpoint()}</span>`
  }</td><td class="folds">${sameFolds ? foldList(row.folds) : inBoth(folds, foldList)}</td></tr>`;
}

function markList(marks: Row["marks"]): Markup {
  return marks.map(({ at, cut }) => html`<span class="mark">${at}<span class="cut">›${cut}</span></span> `);
}

function foldList(folds: Row["folds"]): string {
  return folds.join(" · ");
}

function notchWords(notch: Dual<NotchText>): Html {
  return html`<span class="notch">${rich(say.kitTableNotch, { notch: inBoth(notch, say.kitTableNotchPlace) })}</span>`;
}

/** In both unit systems, also where they do not differ. */
function inBoth<T>(value: Dual<T>, write: (one: T) => Markup): Html {
  return html`<span class="u-mm">${write(value.mm)}</span><span class="u-in">${write(value.in)}</span>`;
}

function merged({ merged }: PatternPage): Markup {
  if (merged.length === 0) return false;
  const items = merged.map(
    ({ leaf, place, level, into }) =>
      html`<li>${rich(say.kitMergedStrip, { leaf, place: dual(place), level, into })}</li>`,
  );
  return html`<details><summary>${say.kitMerged({ count: merged.length })}</summary>
<p>${say.kitMergedText()}</p>
<ul class="columns">${items}</ul></details>`;
}
