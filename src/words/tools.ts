import type { SupplyId } from "../core/kit/supply-id.ts";
import * as say from "./messages.ts";
import { supplyName } from "./supplies.ts";

/** Where a list of supplies says more than a step needs. */
const SHORT: Readonly<Partial<Record<SupplyId, () => string>>> = {
  book: say.toolBook,
  glue: say.toolGlue,
  bakingPaper: say.toolBakingPaper,
  light: say.toolLight,
  cells: say.toolCells,
  blades: say.toolBlade,
  button: say.toolButton,
  boneFolder: say.toolBoneFolder,
  ruler: say.toolRuler,
  weight: say.toolWeight,
};

/** What a step of the work is done with, in a word or two. */
export function toolName(tool: SupplyId): string {
  return SHORT[tool]?.() ?? supplyName({ id: tool, own: undefined, quantity: 2 });
}
