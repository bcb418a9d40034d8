import type { SupplyId } from "../core/kit/supply-id.ts";
import * as say from "./messages.ts";

const TOOLS: Readonly<Record<SupplyId, () => string>> = {
  book: say.toolBook,
  card: say.toolCard,
  acetate: say.toolAcetate,
  tape: say.toolTape,
  glueDots: say.toolGlueDots,
  glue: say.toolGlue,
  bakingPaper: say.toolBakingPaper,
  string: say.stepPartString,
  button: say.stepPartButton,
  light: say.stepPartLight,
  cells: say.toolCells,
  blades: say.toolBlade,
  spacers: say.toolSpacers,
  boneFolder: say.toolBoneFolder,
  ruler: say.toolRuler,
  pencil: say.toolPencil,
  awl: say.toolAwl,
  scissors: say.toolScissors,
  slips: say.toolSlips,
  knife: say.toolCraftKnife,
  mat: say.toolMat,
  weight: say.toolWeight,
  packing: say.toolPacking,
};

/** What a step of the work is done with, in a word or two. */
export function toolName(tool: SupplyId): string {
  return TOOLS[tool]();
}
