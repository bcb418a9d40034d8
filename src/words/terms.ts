import * as say from "./messages.ts";

/** A term of the glossary, without its meaning: pages that link to it carry no more. */
export interface Term {
  /** Its anchor on the glossary's page. */
  readonly id: TermId;
  readonly name: string;
  /** How it stands in sentences, the longest first. */
  readonly forms: readonly string[];
}

export type TermId = (typeof TERMS)[number][0];

/** All terms, in the order in which a maker meets them. */
export function terms(): Term[] {
  return TERMS.map(([id, name, forms]) => ({ id, name: name(), forms: longestFirst(forms().split("|")) }));
}

function longestFirst(forms: readonly string[]): string[] {
  return forms.toSorted((a, b) => b.length - a.length);
}

const TERMS = [
  ["leaf", say.termLeaf, say.termLeafForms],
  ["page", say.termPage, say.termPageForms],
  ["pattern-page", say.termPatternPage, say.termPatternPageForms],
  ["picture-leaf", say.termPictureLeaf, say.termPictureLeafForms],
  ["border-leaf", say.termBorderLeaf, say.termBorderLeafForms],
  ["plate", say.termPlate, say.termPlateForms],
  ["head", say.termHead, say.termHeadForms],
  ["tail", say.termTail, say.termTailForms],
  ["fore-edge", say.termForeEdge, say.termForeEdgeForms],
  ["gutter", say.termGutter, say.termGutterForms],
  ["boards", say.termBoards, say.termBoardsForms],
  ["caliper", say.termCaliper, say.termCaliperForms],
  ["level", say.termLevel, say.termLevelForms],
  ["background", say.termBackground, say.termBackgroundForms],
  ["gauge", say.termGauge, say.termGaugeForms],
  ["score-line", say.termScoreLine, say.termScoreLineForms],
  ["mark", say.termMark, say.termMarkForms],
  ["cut", say.termCut, say.termCutForms],
  ["strip", say.termStrip, say.termStripForms],
  ["marking-strip", say.termMarkingStrip, say.termMarkingStripForms],
  ["flap", say.termFlap, say.termFlapForms],
  ["stepped-folds", say.termSteppedFolds, say.termSteppedFoldsForms],
  ["single-folds", say.termSingleFolds, say.termSingleFoldsForms],
  ["crease", say.termCrease, say.termCreaseForms],
  ["corner-gauge", say.termCornerGauge, say.termCornerGaugeForms],
  ["folding-card", say.termFoldingCard, say.termFoldingCardForms],
  ["turns", say.termTurns, say.termTurnsForms],
  ["merged", say.termMerged, say.termMergedForms],
  ["tack", say.termTack, say.termTackForms],
  ["loose", say.termLoose, say.termLooseForms],
  ["batch", say.termBatch, say.termBatchForms],
  ["checkpoint", say.termCheckpoint, say.termCheckpointForms],
  ["packing", say.termPacking, say.termPackingForms],
  ["opening", say.termOpening, say.termOpeningForms],
  ["hold-width", say.termHoldWidth, say.termHoldWidthForms],
  ["holder", say.termHolder, say.termHolderForms],
  ["pocket", say.termPocket, say.termPocketForms],
  ["notch", say.termNotch, say.termNotchForms],
  ["window", say.termWindow, say.termWindowForms],
  ["base-frame", say.termBaseFrame, say.termBaseFrameForms],
  ["glazing", say.termGlazing, say.termGlazingForms],
  ["hole", say.termHole, say.termHoleForms],
  ["motif", say.termMotif, say.termMotifForms],
  ["packet", say.termPacket, say.termPacketForms],
] as const;
