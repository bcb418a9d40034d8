import type { KitClass } from "../../../core/class/kit-class.ts";
import * as say from "../../../words/messages.ts";
import { supplyCalled } from "../../../words/supplies.ts";
import type { KitViewBase } from "../../views/kit-view.ts";
import type { SupplyView } from "../../views/supply-view.ts";
import { type Html, html } from "../markup.ts";

/** Whether a student brings a supply: her book, or what the class asks her to bring. */
function isBrought({ id }: SupplyView, { brought }: KitClass): boolean {
  return id !== undefined && (id === "book" || brought.includes(id));
}

/** A seat's supplies: what she brings, and what is there in the class. */
export function seatSupplies({ supplies, counts }: Pick<KitViewBase, "supplies" | "counts">, plan: KitClass): Html {
  const ready = plan.ready.filter((stage) => (stage === "scores" ? counts.scores : counts.parts) > 0);
  const others = plan.bring.filter((item) => supplyCalled(item) === undefined);
  const own = supplies.filter((supply) => isBrought(supply, plan));
  const there = supplies.filter((supply) => !isBrought(supply, plan));
  return html`<div class="pair">
<div><h3>${say.seatBrings()}</h3><ul class="supplies">${own.map(item)}${others.map((one) => html`<li dir="auto"><b>${one}</b></li>`)}</ul></div>
<div><h3>${say.seatSupplied()}</h3><ul class="supplies">${ready.map((stage) => html`<li><b>${say.seatReady({ stage })}</b></li>`)}${there.map(item)}</ul></div>
</div>`;
}

/** What is there in a class, whichever kit one makes: each thing once. */
export function suppliedNames(kits: readonly KitViewBase[], plan: KitClass): string[] {
  const there = kits.flatMap(({ supplies }) => supplies.filter((supply) => !isBrought(supply, plan)));
  return [...new Set(there.map(({ item }) => item))];
}

function item({ kind, line, item: name, note }: SupplyView): Html {
  return html`<li><b>${kind === "material" ? line : name}</b>${note !== "" && html`<span class="note">${note}</span>`}</li>`;
}
