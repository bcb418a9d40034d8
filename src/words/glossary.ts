import * as say from "./messages.ts";

/** A term of the glossary. `id` is its anchor on the glossary's page. */
export interface Term {
  readonly id: string;
  readonly name: string;
  /** How it stands in sentences, the longest first. */
  readonly forms: readonly string[];
  readonly meaning: string;
}

/** All terms, in the order in which a maker meets them. */
export function glossary(): Term[] {
  return TERMS.map(([id, name, forms, meaning]) => ({
    id,
    name: name(),
    forms: forms()
      .split("|")
      .toSorted((a, b) => b.length - a.length),
    meaning: meaning(),
  }));
}

type Said = () => string;

const TERMS: readonly (readonly [id: string, name: Said, forms: Said, meaning: Said])[] = [
  ["leaf", say.termLeaf, say.termLeafForms, say.termLeafMeaning],
  ["page", say.termPage, say.termPageForms, say.termPageMeaning],
  ["pattern-page", say.termPatternPage, say.termPatternPageForms, say.termPatternPageMeaning],
  ["picture-leaf", say.termPictureLeaf, say.termPictureLeafForms, say.termPictureLeafMeaning],
  ["border-leaf", say.termBorderLeaf, say.termBorderLeafForms, say.termBorderLeafMeaning],
  ["plate", say.termPlate, say.termPlateForms, say.termPlateMeaning],
  ["head", say.termHead, say.termHeadForms, say.termHeadMeaning],
  ["tail", say.termTail, say.termTailForms, say.termTailMeaning],
  ["fore-edge", say.termForeEdge, say.termForeEdgeForms, say.termForeEdgeMeaning],
  ["gutter", say.termGutter, say.termGutterForms, say.termGutterMeaning],
  ["boards", say.termBoards, say.termBoardsForms, say.termBoardsMeaning],
  ["caliper", say.termCaliper, say.termCaliperForms, say.termCaliperMeaning],
  ["level", say.termLevel, say.termLevelForms, say.termLevelMeaning],
  ["background", say.termBackground, say.termBackgroundForms, say.termBackgroundMeaning],
  ["gauge", say.termGauge, say.termGaugeForms, say.termGaugeMeaning],
  ["score-line", say.termScoreLine, say.termScoreLineForms, say.termScoreLineMeaning],
  ["mark", say.termMark, say.termMarkForms, say.termMarkMeaning],
  ["cut", say.termCut, say.termCutForms, say.termCutMeaning],
  ["strip", say.termStrip, say.termStripForms, say.termStripMeaning],
  ["flap", say.termFlap, say.termFlapForms, say.termFlapMeaning],
  ["stepped-folds", say.termSteppedFolds, say.termSteppedFoldsForms, say.termSteppedFoldsMeaning],
  ["single-folds", say.termSingleFolds, say.termSingleFoldsForms, say.termSingleFoldsMeaning],
  ["merged", say.termMerged, say.termMergedForms, say.termMergedMeaning],
  ["tack", say.termTack, say.termTackForms, say.termTackMeaning],
  ["loose", say.termLoose, say.termLooseForms, say.termLooseMeaning],
  ["batch", say.termBatch, say.termBatchForms, say.termBatchMeaning],
  ["checkpoint", say.termCheckpoint, say.termCheckpointForms, say.termCheckpointMeaning],
  ["packing", say.termPacking, say.termPackingForms, say.termPackingMeaning],
  ["opening", say.termOpening, say.termOpeningForms, say.termOpeningMeaning],
  ["hold-width", say.termHoldWidth, say.termHoldWidthForms, say.termHoldWidthMeaning],
  ["holder", say.termHolder, say.termHolderForms, say.termHolderMeaning],
  ["pocket", say.termPocket, say.termPocketForms, say.termPocketMeaning],
  ["notch", say.termNotch, say.termNotchForms, say.termNotchMeaning],
  ["window", say.termWindow, say.termWindowForms, say.termWindowMeaning],
  ["base-frame", say.termBaseFrame, say.termBaseFrameForms, say.termBaseFrameMeaning],
  ["glazing", say.termGlazing, say.termGlazingForms, say.termGlazingMeaning],
  ["hole", say.termHole, say.termHoleForms, say.termHoleMeaning],
  ["motif", say.termMotif, say.termMotifForms, say.termMotifMeaning],
  ["packet", say.termPacket, say.termPacketForms, say.termPacketMeaning],
];
