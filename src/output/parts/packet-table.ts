import * as say from "../../words/messages.ts";
import { tableFoot, tableIntroduction } from "../../words/packet-table.ts";
import type { PrintedKit } from "../views/packet-view.ts";
import type { PrintedRow, TablePage } from "../views/table-pages.ts";
import { type Html, html, type Markup } from "./markup.ts";

type Titled = Pick<PrintedKit, "kit" | "pattern" | "counts">;

/** How a table is printed: which pages, how many columns of marks, and the class of its sheets. */
export interface PrintedTable {
  readonly pages: readonly TablePage[];
  readonly cells: number;
  readonly size: "normal" | "large";
}

/** The pattern's table on paper: a sheet for each page. Pages and row heights are computed, so nothing is left to the browser. */
export function packetTable(view: Titled, { pages, cells, size }: PrintedTable): Html {
  const heads = [
    say.packetTableDone(),
    say.tableLeaf(),
    say.tablePatternPage(),
    say.tableBookPage(),
    say.tableMarks(),
    say.packetTableFolds(),
  ].map((head) => html`<th scope="col">${head}</th>`);
  const sheets = pages.map(
    (page, i) => html`
<section class="sheet ${size}" data-sheet>
<header class="sheet-head">${heading(view, size, i + 1, pages.length)}
<p>${tableIntroduction(view.kit, view.pattern)}</p></header>
<table class="table cells-${cells}"><thead><tr>${heads}</tr></thead>
<tbody>${page.rows.map(tableRow)}
</tbody></table>
<p class="sheet-foot">${foot(page, view.counts.cuts)}</p>
</section>`,
  );
  return html`${sheets}`;
}

/** The large-print table alone. */
export function largePart(view: PrintedKit): Html {
  const { largePages, largeCells } = view.packet;
  return packetTable(view, { pages: largePages, cells: largeCells, size: "large" });
}

function heading({ kit }: Titled, size: PrintedTable["size"], sheet: number, sheets: number): Html {
  if (size === "large" && sheet === 1) return html`<h1>${say.packetLargeHeading({ title: kit.title })}</h1>`;
  const continued = sheet > 1 && html` <span>${say.packetTableContinued({ sheet, sheets })}</span>`;
  return html`<h2>${say.kitTable()}${continued}</h2>`;
}

function tableRow(row: PrintedRow): Html {
  const kind = [
    `lines-${row.lines}`,
    row.ruled ? "ruled" : "",
    row.checkpoint ? "checkpoint" : "",
    row.border ? "border" : "",
  ].filter((name) => name !== "");
  return html`
<tr class="${kind.join(" ")}"><td class="tick"><span class="box"></span></td><th scope="row">${row.leaf}</th>${
    row.patternPage ? html`<td>${row.patternPage}</td>` : html`<td class="name">${say.tableBorder()}</td>`
  }<td${row.unnumbered && html` class="name"`}>${row.bookPage}</td><td class="marks">${marks(row)}${
    row.notch && html`<div class="notch">${say.packetTableNotch({ notch: say.kitTableNotchPlace(row.notch) })}</div>`
  }</td><td class="folds">${row.foldLines.map((line) => html`<div>${line.join(" · ")}</div>`)}</td></tr>`;
}

function marks({ markLines }: PrintedRow): Markup {
  if (markLines.length === 0) return say.tableWhole();
  return markLines.map(
    (line) =>
      html`<div>${line.map(({ at, cut }) => html`<span class="mark">${at}<span class="cut">›${cut}</span></span> `)}</div>`,
  );
}

function foot({ leaves, cuts, cutsSoFar: sofar, rows, last }: TablePage, all: number): Html {
  const { sums, end } = tableFoot({ leaves, cuts, sofar, all, lastLeaf: last ? rows.at(-1)!.leaf : undefined });
  return last ? html`${sums} <strong>${end}</strong>` : html`${sums} ${end}`;
}
