import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";
import { differenceDialog, ribbon } from "./table.ts";

/** How a seat stands, as its row says it in a word or two. */
export type SeatMark = "fits" | "check" | "poor" | "change" | "no" | "awaiting" | "wrong" | "working";

/** A seat as a row of the grid. */
export interface SeatsRow {
  /** Of its cells, in the order of the columns. */
  readonly texts: readonly string[];
  /** Places of cells in which something is wrong. */
  readonly wrong: readonly number[];
  readonly mark: SeatMark;
}

/** What is told of the seat in use. */
export interface SeatTold {
  readonly title: string;
  readonly mark: SeatMark;
  readonly lines: readonly string[];
  /** What helps, each with what it takes and leaves. */
  readonly offers: readonly { readonly text: string; readonly facts: string }[];
}

const MARKS: Readonly<Record<SeatMark, () => string>> = {
  fits: say.deskClassFits,
  check: say.deskClassCheck,
  poor: say.deskClassPoor,
  change: say.deskClassChange,
  no: say.deskClassNo,
  awaiting: say.deskClassAwaiting,
  wrong: say.deskClassWrong,
  working: say.deskClassWorking,
};

/** How a seat stands, in a word or two. */
export function markWords(mark: SeatMark): string {
  return MARKS[mark]();
}

/** A class on the desk, before its script has laid anything out; what it is waited for by (`seatsWait`) stands where its grid will. */
export function deskSeats(title: string, wait: Html | undefined = undefined): Html {
  return html`<div class="table seats${wait && " waiting"}" data-table${wait && html` aria-busy="true"`}>
${ribbon(title)}
<div class="table-news" data-news></div>
<div class="seats-things">
<section class="thing" aria-labelledby="thing-seats"><h2 class="tag" id="thing-seats">${say.deskClassSeats()}</h2>
<div class="seats-paper">
<p class="tools"><button type="button" data-add>${say.deskClassAddSeat()}</button>
<label><input type="checkbox" data-all> ${say.deskClassAllColumns()}</label></p>
<div class="seats-scroll" data-grid>${wait}</div>
<p class="seats-keys" data-units></p>
<p class="seats-keys">${say.deskClassKeys()}</p>
</div></section>
<section class="thing seat-told" aria-labelledby="thing-seat"><h2 class="tag" id="thing-seat">${say.deskClassVerdict()}</h2>
<div class="seat-slip" data-seat></div></section>
</div>
${differenceDialog()}
</div>`;
}

/** What stands in the place of a grid, whose seats cannot be judged before their kits are there. */
export function seatsWait(): Html {
  return html`<p class="seats-none" role="status" data-wait>${say.deskClassOpening()}</p>`;
}

/** The grid: a head with the columns, a row for each seat, and how it comes out. No cell is in use yet. */
export function seatsGrid(title: string, columns: readonly string[], rows: readonly SeatsRow[]): Html {
  const head = columns.map(
    (column) => html`<th role="columnheader" scope="col">${say.deskClassColumn({ column })}</th>`,
  );
  return html`<table role="grid" aria-label="${say.deskClassGrid({ title })}"><thead><tr role="row">${head[0]}<th role="columnheader" scope="col">${say.deskClassVerdict()}</th>${head.slice(1)}</tr></thead>
<tbody>${rows.map(rowOf)}</tbody></table>
${rows.length === 0 && html`<p class="seats-none">${say.deskClassNone()}</p>`}`;
}

/** The seat, how it comes out, and its other cells. */
function rowOf({ texts, wrong, mark }: SeatsRow, r: number): Html {
  const [seat, ...cells] = texts.map((text, c) => cell(text, { r, c, isWrong: wrong.includes(c) }));
  return html`<tr role="row">${seat}${verdict(mark)}${cells}</tr>`;
}

function cell(
  text: string,
  { r, c, isWrong }: { readonly r: number; readonly c: number; readonly isWrong: boolean },
): Html {
  return html`<td role="gridcell" tabindex="-1" data-row="${r}" data-column="${c}"${isWrong && html` class="wrong" aria-invalid="true"`}>${text}</td>`;
}

function verdict(mark: SeatMark): Html {
  return html`<td role="gridcell" class="mark ${mark}" data-mark>${markWords(mark)}</td>`;
}

/** What is told of the seat that the cell in use belongs to. */
export function seatTold({ title, mark, lines, offers }: SeatTold): Html {
  const ways = offers.map(
    ({ text, facts }, i) =>
      html`<li><button type="button" data-offer="${i}">${text}</button> <span>${facts}</span></li>`,
  );
  return html`<h3>${title}</h3><p class="mark ${mark}">${markWords(mark)}</p>
${lines.map((line) => html`<p>${line}</p>`)}${offers.length > 0 && html`<ul class="seat-ways">${ways}</ul>`}`;
}

/** That the table of a class is a workbook: its rows can be taken as another kind of table. */
export function workbookNews(file: string, csv: string): Html {
  return html`<section class="news ask"><p>${say.deskClassWorkbook({ file })} ${say.deskClassWorkbookDo({ csv })}</p><p class="buttons"><a class="button" data-csv download="${csv}">${say.deskClassTakeCsv()}</a></p></section>`;
}
