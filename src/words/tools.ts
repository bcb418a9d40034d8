import type { SupplyId } from "../core/kit/supply-id.ts";
import { supplyName } from "./supplies.ts";

/** What a step of the work is done with, called as in the list of supplies. */
export function toolName(tool: SupplyId): string {
  return supplyName({ id: tool, own: undefined, quantity: tool === "glueDots" ? 2 : 1 });
}
