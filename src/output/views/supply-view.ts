import type { Supply } from "../../core/supplies/supply.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { supplyLine, supplyName, supplyNote } from "../../words/supplies.ts";

/** A supply with its words: `2 sheets of card`, and why. */
export interface SupplyView extends Supply {
  readonly item: string;
  readonly line: string;
  readonly note: string;
}

export function supplyView(supply: Supply, units: UnitSystem): SupplyView {
  return { ...supply, item: supplyName(supply), line: supplyLine(supply), note: supplyNote(supply, units) };
}
