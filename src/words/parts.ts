import type { UnitSystem } from "../core/units/length.ts";
import type { MarkKind, Part, PartKind } from "../core/window/part.ts";
import type { BookWindow } from "../core/window/window.ts";
import { sayLength } from "./lengths.ts";
import * as say from "./messages.ts";
import { shortName } from "./short-name.ts";

/** A part's name; a motif's holds its author's word. */
export function partName({ kind, motif }: { readonly kind: PartKind; readonly motif?: string | undefined }): string {
  switch (kind) {
    case "base-frame":
      return say.partBaseFrame();
    case "glazing":
      return say.partGlazing();
    case "door":
      return say.partDoor();
    case "closure-tab":
      return say.partClosureTab();
    case "decoration-guide":
      return say.partDecorationGuide();
    case "holder":
      return say.partHolder();
    case "scoring-gauge":
      return say.partScoringGauge();
    case "corner-gauge":
      return say.partCornerGauge();
    case "folding-card":
      return say.partFoldingCard();
    case "largest-motif":
    case "motif":
      return say.partMotif({ name: shortName(motif ?? "") });
  }
}

/** What a part is for, in a few words. */
export function partUse({ kind }: Part, { wish }: Pick<BookWindow, "wish">, units: UnitSystem): string {
  switch (kind) {
    case "base-frame":
      return say.useBaseFrame();
    case "glazing":
      return say.useGlazing({ lip: sayLength(wish.lip, units, undefined, 2) });
    case "door":
      return say.useDoor();
    case "closure-tab":
      return say.useClosureTab();
    case "decoration-guide":
      return say.useDecorationGuide();
    case "holder":
      return say.useHolder();
    case "scoring-gauge":
      return say.useScoringGauge();
    case "corner-gauge":
      return say.useCornerGauge();
    case "folding-card":
      return say.useFoldingCard();
    case "largest-motif":
      return say.useLargestMotif();
    case "motif":
      return say.useMotif();
  }
}

/** What stands at a position line; empty where another line explains it. */
export function markText(kind: MarkKind | undefined): string {
  switch (kind) {
    case undefined:
      return "";
    case "tab-behind":
      return say.markTabBehind();
    case "button":
      return say.markButton();
    case "glue-behind-frame":
      return say.markGlueBehindFrame();
    case "light-here":
      return say.markLightHere();
    case "first-picture-leaf":
      return say.markFirstPictureLeaf();
    case "last-picture-leaf":
      return say.markLastPictureLeaf();
  }
}

/** What a part is cut from; card with its colour where the kit states it. */
export function materialName({ material, card }: Pick<Part, "material" | "card">): string {
  switch (material) {
    case "card":
      return card ? say.materialCardOf({ colour: shortName(card.name) }) : say.materialCard();
    case "acetate":
      return say.materialAcetate();
    case "paper":
      return say.materialPaper();
  }
}
