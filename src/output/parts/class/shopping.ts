import { listText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { seatsText } from "../../../words/seats.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { CostsView, SeatCost, ShoppingRow } from "../../views/class/shopping-view.ts";
import { anyLonger } from "../long-text.ts";
import { type Html, html, type Markup, rich } from "../markup.ts";

/** Usual letters of an amount that surely fits its column. */
const LONG_AMOUNT = 18;

/** What to buy and to find for the whole class, and what it costs; nothing before a book is there. */
export function shoppingSection(view: ClassView): Markup {
  if (view.shopping.length === 0) return false;
  return html`<section class="flow run-on" data-flow><h2>${say.teacherShopping()}</h2>
${materialsTable(view)}
${toolsTable(view)}
${view.unusedStock.length > 0 && html`<p class="note">${say.teacherUnused({ items: listText(view.unusedStock) })}</p>`}
${away(view)}
${awaited(view)}
${view.costs && costsPart(view.costs)}
</section>`;
}

function materialsTable({ shopping, costs }: ClassView): Html {
  const priced = costs !== undefined;
  const rows = shopping.filter(({ kind }) => kind === "material");
  return html`<table class="${tableClass(rows)}"><thead><tr>${heads(say.teacherMaterialHead(), say.teacherBuyHead())}${
    priced && html`<th scope="col">${say.teacherPriceHead()}</th>`
  }</tr></thead><tbody>${rows.map((row) => html`<tr>${cells(row)}${priced && html`<td>${row.price}</td>`}</tr>`)}</tbody></table>`;
}

function toolsTable({ shopping }: ClassView): Html {
  const rows = shopping.filter(({ kind }) => kind === "tool");
  return html`<table class="${tableClass(rows)}"><thead><tr>${heads(say.teacherToolHead(), say.teacherFindHead())}</tr></thead><tbody>${rows.map((row) => html`<tr>${cells(row)}</tr>`)}</tbody></table>`;
}

/** Amounts with a long unit break; usual ones stay on their line. */
function tableClass(rows: readonly ShoppingRow[]): string {
  const amounts = rows.flatMap(({ need, stock, buy, price }) => [need, stock, buy, price]);
  return anyLonger(amounts, LONG_AMOUNT) ? "shopping wide" : "shopping";
}

function heads(thing: string, rest: string): Html {
  return html`<td></td><th scope="col">${thing}</th><th scope="col">${say.teacherNeededHead()}</th><th scope="col">${say.teacherStockHead()}</th><th scope="col">${rest}</th>`;
}

function cells({ name, note, need, stock, buy }: ShoppingRow): Html {
  return html`<td><span class="box"></span></td><th scope="row">${name}<span class="note">${note}</span></th><td>${need}</td><td>${stock}</td><td><strong>${buy}</strong></td>`;
}

/** Seats that the list leaves out. */
function away({ seats }: ClassView): Markup {
  const numbers = seats.filter(({ misfit }) => misfit).map(({ number }) => number);
  if (numbers.length === 0) return false;
  return html`<p class="note">${say.teacherAway({ count: numbers.length, seats: seatsText(numbers) })}</p>`;
}

/** Seats whose books are still to come. */
function awaited({ plan }: ClassView): Markup {
  const numbers = plan.awaiting.map(({ number }) => number);
  if (numbers.length === 0) return false;
  return html`<p class="note">${say.teacherAwaited({ count: numbers.length, seats: seatsText(numbers) })}</p>`;
}

function costsPart({ seats, used, toPay }: CostsView): Html {
  const text = rich(say.teacherCostsText, {
    used: html`<strong>${used}</strong>`,
    toPay: html`<strong>${toPay}</strong>`,
  });
  return html`<h2>${say.teacherCosts()}</h2>
<p>${text}</p>
<table class="costs"><thead><tr><th scope="col">${say.classSeatHead()}</th><th scope="col">${say.teacherCostsKitHead()}</th><th scope="col">${say.teacherUses()}</th><th scope="col">${say.teacherPaid()}</th></tr></thead><tbody>${seats.map(costRow)}</tbody></table>`;
}

function costRow({ seat, kit, amount }: SeatCost): Html {
  return html`<tr><th scope="row">${seat}</th><td>${kit}</td><td>${amount}</td><td><span class="box"></span></td></tr>`;
}
