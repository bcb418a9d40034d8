import type { Part } from "../core/window/part.ts";
import { type Dual, dual, dualDepth, same } from "./dual.ts";
import * as say from "./messages.ts";

const PARTS = {
  gauge: say.partGauge,
  holder: say.partHolder,
  baseFrame: say.partBaseFrame,
  glazing: say.partGlazing,
  door: say.partDoor,
  closureTab: say.partClosureTab,
  decorationGuide: say.partDecorationGuide,
  button: say.partButton,
  string: say.partString,
  light: say.partLight,
} as const;

/** What a step of the work puts together: a part with a name of its own, or a motif by its author's name. */
export type StepPart = keyof typeof PARTS | { readonly motif: string };

/** The window's parts by the names that files and layouts know them by. */
const OF_WINDOW: Readonly<Record<string, StepPart>> = {
  holder: "holder",
  "base frame": "baseFrame",
  glazing: "glazing",
  door: "door",
  "closure tab": "closureTab",
  "decoration guide": "decorationGuide",
};

/** Which part a part of the window is. */
export function stepPart({ name }: Pick<Part, "name">): StepPart {
  return OF_WINDOW[name] ?? { motif: name.replace(/^motif /, "") };
}

export function partName(part: StepPart): string {
  return typeof part === "object" ? say.partMotif({ name: part.motif }) : PARTS[part]();
}

/** What a part of the window is for, in a few words; `lip` is the window's own, mm. `isLargest` is asked of motifs. */
export function partUse(part: StepPart, lip: number, isLargest: boolean): Dual {
  if (typeof part === "object") return same(isLargest ? say.partUseMotifLargest() : say.partUseMotif());
  switch (part) {
    case "baseFrame":
      return same(say.partUseBaseFrame());
    case "glazing":
      return dual((units) => say.partUseGlazing({ lip: dualDepth(lip)[units] }));
    case "door":
      return same(say.partUseDoor());
    case "closureTab":
      return same(say.partUseClosureTab());
    case "decorationGuide":
      return same(say.partUseDecorationGuide());
    case "holder":
      return same(say.partUseHolder());
    default:
      return same("");
  }
}

export function materialName(material: Part["material"]): string {
  switch (material) {
    case "card":
      return say.materialCard();
    case "acetate":
      return say.materialAcetate();
    case "paper":
      return say.materialPaper();
  }
}
