import * as say from "../../words/messages.ts";
import { money } from "../../words/money.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";

/** What is used up and what stays, each with its price where the kit states one. */
export function suppliesPart({ supplies, kit, cost }: Pick<KitViewBase, "supplies" | "kit" | "cost">): Html {
  const materials = supplies
    .filter(({ kind }) => kind === "material")
    .map(({ line, note, price }) => {
      const stated =
        price !== undefined && price > 0 && html` <span class="price">${money(price, kit.currency)}</span>`;
      return html`<li><b>${line}</b>${noted(note)}${stated}</li>`;
    });
  const tools = supplies
    .filter(({ kind }) => kind === "tool")
    .map(({ item, note }) => html`<li>${item}${noted(note)}</li>`);
  return html`<div class="pair">
<div><h3>${say.supplyMaterials()}</h3><ul class="supplies">${materials}</ul></div>
<div><h3>${say.supplyTools()}</h3><ul class="supplies">${tools}</ul></div>
</div>
${cost !== "" && html`<p class="key">${rich(say.supplyTotal, { total: html`<strong>${cost}</strong>` })}</p>`}`;
}

function noted(note: string): Markup {
  return note !== "" && html`<span class="note">${note}</span>`;
}
