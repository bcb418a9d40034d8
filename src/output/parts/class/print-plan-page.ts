import { type CountedFile, type PrintRow, printPlanOf } from "../../../core/class/print-plan.ts";
import * as say from "../../../words/messages.ts";
import { money } from "../../../words/money.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import { longClass } from "../long-text.ts";
import { type Html, html, type Markup, rich } from "../markup.ts";
import { LONG_TITLE } from "./roster.ts";

/** What is printed for a class, how often and in which order; `files` are what is there to be counted, once it is printed. */
export function printPlanPage(view: ClassView, files?: readonly CountedFile[]): Html {
  return html`<section class="flow" data-flow data-class-plan><p class="over">${say.papersPlan()}</p>
<h1 dir="auto"${longClass(view.plan.title, LONG_TITLE)}>${view.plan.title}</h1>
${files ? counted(view, files) : html`<p>${say.papersPlanUncounted()}</p>`}
</section>`;
}

function counted({ plan, sheets }: ClassView, files: readonly CountedFile[]): Html {
  const { rows, sides, paper, card, cost } = printPlanOf(plan, files);
  const priced = cost !== undefined;
  const amount = (of: number | undefined): string => (of === undefined ? "" : money(of, plan.currency));
  const row = (one: PrintRow): Html =>
    html`<tr><td><span class="box"></span></td><th scope="row">${fileName(one, plan.paper)}<span class="note">${use(one)}</span></th><td>${say.papersTimes({ copies: one.copies })}</td><td>${one.pages}</td><td>${say.papersSheets({ sheets: one.sheets, stock: one.stock, sides: one.bothSides ? "both" : "single" })}</td>${priced && html`<td>${amount(one.cost)}</td>`}</tr>`;
  return html`<p>${say.papersPlanLede()}</p>
<table class="print-plan"><thead><tr><td></td><th scope="col">${say.papersFileHead()}</th><th scope="col">${say.papersCopiesHead()}</th><th scope="col">${say.papersPagesHead()}</th><th scope="col">${say.papersSheetsHead()}</th>${priced && html`<th scope="col">${say.papersCostHead()}</th>`}</tr></thead><tbody>${rows.map(row)}</tbody><tfoot><tr><td></td><th scope="row">${say.papersAll()}</th><td></td><td>${sides}</td><td>${say.papersAllSheets({ paper, card })}</td>${priced && html`<td><strong>${amount(cost)}</strong></td>`}</tr></tfoot></table>
<p>${say.papersScale()}</p>
${!priced && html`<p class="note">${say.papersNoPrice()}</p>`}
${sheets.length > 0 && byHand()}`;
}

function byHand(): Markup {
  return html`<p>${rich(say.papersByHand, { file: html`<code>${CUT_SHEETS}</code>` })}</p>`;
}

/** The cut sheets at true size, among the class's papers. */
export const CUT_SHEETS = "cut-sheets.pdf";

function fileName({ file }: PrintRow, paper: string): string {
  return file === "to-read" || file === "to-cut-out" ? `${file}-${paper}.pdf` : `${file}.pdf`;
}

function use({ file }: PrintRow): string {
  switch (file) {
    case "measuring-card":
      return say.papersMeasuringCard();
    case "teacher":
      return say.papersTeacher();
    case "to-read":
      return say.papersToRead();
    case "to-cut-out":
      return say.papersToCutOut();
  }
}
