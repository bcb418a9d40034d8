import type { Book } from "../../core/book/book.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import type { SupplyView } from "../views/supply-view.ts";
import { type Html, html, raw } from "./markup.ts";

/** Whose book a piece is made in. */
export function makeBook({ leaves, leafHeight, leafWidth, blockThickness }: Book, units: UnitSystem): string {
  return say.makeBook({
    leaves,
    height: formatSize(leafHeight, units),
    width: formatSize(leafWidth, units),
    thickness: formatSize(blockThickness, units),
  });
}

/** What is laid out before the work begins, to be ticked; `ticked` are those at hand, by their names. */
export function suppliesToTick(supplies: readonly SupplyView[], ticked: readonly string[]): Html {
  const items = supplies.map((supply) => {
    const name = supplyTick(supply);
    const checked = ticked.includes(name) && raw(" checked");
    const words = supply.kind === "tool" ? supply.item : supply.line;
    const note = supply.note !== "" && html`<span class="note">${supply.note}</span>`;
    return html`<li><label><input type="checkbox" data-tick="${name}"${checked}> <span><b>${words}</b>${note}</span></label></li>`;
  });
  return html`<ul class="supplies ticks">${items}</ul>`;
}

/** How a piece remembers that a supply is at hand. */
export function supplyTick({ id, own }: Pick<SupplyView, "id" | "own">): string {
  return `supply ${id ?? own?.item ?? ""}`;
}
