import type { Stock } from "../../core/class/kit-class.ts";
import * as say from "../../words/messages.ts";
import { supplyNamed } from "../../words/supplies.ts";

/** Something at hand as a class states it: by the id of a supply that the program counts where its name is one, in any case. */
export function stockOf({ item, quantity }: Omit<Stock, "id">): Stock {
  return { id: supplyNamed(item) ?? paperNamed(item), item, quantity };
}

/** What guides are drawn on: no kit's supply, but a line of a class's list. */
function paperNamed(item: string): "paper" | undefined {
  const names = ["paper", say.supplyPaper().toLowerCase()];
  return names.includes(item.trim().toLowerCase()) ? "paper" : undefined;
}
