import * as say from "./messages.ts";

const TOOLS = {
  ruler: say.toolRuler,
  metalRuler: say.toolMetalRuler,
  rulerOrStrips: say.toolRulerOrStrips,
  pencil: say.toolPencil,
  craftKnife: say.toolCraftKnife,
  mat: say.toolMat,
  boneFolder: say.toolBoneFolder,
  gauge: say.toolGauge,
  packing: say.toolPacking,
  glueDots: say.toolGlueDots,
  tape: say.toolTape,
  glue: say.toolGlue,
} as const;

/** What a step of the work is done with. */
export type Tool = keyof typeof TOOLS;

export function toolName(tool: Tool): string {
  return TOOLS[tool]();
}
