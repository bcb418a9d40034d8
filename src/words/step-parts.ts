import type { Part } from "../core/window/part.ts";
import { type Dual, dual, dualDepth, same } from "./dual.ts";
import * as say from "./messages.ts";

const NAMES = {
  "base-frame": say.partBaseFrame,
  glazing: say.partGlazing,
  door: say.partDoor,
  "closure-tab": say.partClosureTab,
  "decoration-guide": say.partDecorationGuide,
  holder: say.partHolder,
  gauge: say.stepPartGauge,
  button: say.stepPartButton,
  string: say.stepPartString,
  light: say.stepPartLight,
} as const;

/** What a step of the work puts together: a part with a name of its own, or a motif by its author's name. */
export type StepPart = keyof typeof NAMES | { readonly motif: string };

/** Which part a part of the window is. */
export function stepPart({ name }: Pick<Part, "name">): StepPart {
  const id = name.replace(" ", "-");
  return id in NAMES ? (id as keyof typeof NAMES) : { motif: name.replace(/^motif /, "") };
}

export function stepPartName(part: StepPart): string {
  return typeof part === "object" ? say.partMotif({ name: part.motif }) : NAMES[part]();
}

/** What a part of the window is for, in a few words; `lip` is the window's own, mm. `isLargest` is asked of motifs. */
export function stepPartUse(part: StepPart, lip: number, isLargest: boolean): Dual {
  if (typeof part === "object") return same(isLargest ? say.useLargestMotif() : say.useMotif());
  switch (part) {
    case "base-frame":
      return same(say.useBaseFrame());
    case "glazing":
      return dual((units) => say.useGlazing({ lip: dualDepth(lip)[units] }));
    case "door":
      return same(say.useDoor());
    case "closure-tab":
      return same(say.useClosureTab());
    case "decoration-guide":
      return same(say.useDecorationGuide());
    case "holder":
      return same(say.useHolder());
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
