import type { Kit } from "../kit/kit.ts";
import { TOOL_SUPPLIES } from "../kit/supply-id.ts";
import type { WorkStep } from "../steps/work-step.ts";
import { material, mergeOwn, tool } from "./supplies.ts";
import type { Supply } from "./supply.ts";

/** Everything that a kit needs that is folded by corners: a book, card for its gauges, no blade and no glue; with the kit's own supplies merged in. */
export function cornerSupplies(kit: Kit, work: readonly WorkStep[]): Supply[] {
  const { leaves, leafHeight, leafWidth } = kit.book;
  const used = new Set(work.flatMap((step) => step.supplies));
  const computed = [
    material(kit, "book", 1, "each", { kind: "book", leaves, leafHeight, leafWidth }),
    material(kit, "card", 1, "sheet", { kind: "corner-card", sheet: kit.sheets[0]!.name }),
    ...TOOL_SUPPLIES.filter((id) => used.has(id)).map(
      (id): Supply => (id === "scissors" ? { ...tool(id), reason: { kind: "card-scissors" } } : tool(id)),
    ),
  ];
  return mergeOwn(computed, kit.supplies);
}
