import * as say from "./messages.ts";
import { type Term, type TermId, terms } from "./terms.ts";

/** All terms with their meanings, in the order in which a maker meets them. */
export function glossary(): (Term & { readonly meaning: string })[] {
  return terms().map((term) => ({ ...term, meaning: MEANINGS[term.id]() }));
}

const MEANINGS: Readonly<Record<TermId, () => string>> = {
  leaf: say.termLeafMeaning,
  page: say.termPageMeaning,
  "pattern-page": say.termPatternPageMeaning,
  "picture-leaf": say.termPictureLeafMeaning,
  "border-leaf": say.termBorderLeafMeaning,
  plate: say.termPlateMeaning,
  head: say.termHeadMeaning,
  tail: say.termTailMeaning,
  "fore-edge": say.termForeEdgeMeaning,
  gutter: say.termGutterMeaning,
  boards: say.termBoardsMeaning,
  caliper: say.termCaliperMeaning,
  level: say.termLevelMeaning,
  background: say.termBackgroundMeaning,
  gauge: say.termGaugeMeaning,
  "score-line": say.termScoreLineMeaning,
  mark: say.termMarkMeaning,
  cut: say.termCutMeaning,
  strip: say.termStripMeaning,
  "marking-strip": say.termMarkingStripMeaning,
  flap: say.termFlapMeaning,
  "stepped-folds": say.termSteppedFoldsMeaning,
  "single-folds": say.termSingleFoldsMeaning,
  crease: say.termCreaseMeaning,
  "corner-gauge": say.termCornerGaugeMeaning,
  "folding-card": say.termFoldingCardMeaning,
  turns: say.termTurnsMeaning,
  merged: say.termMergedMeaning,
  tack: say.termTackMeaning,
  loose: say.termLooseMeaning,
  batch: say.termBatchMeaning,
  checkpoint: say.termCheckpointMeaning,
  packing: say.termPackingMeaning,
  opening: say.termOpeningMeaning,
  "hold-width": say.termHoldWidthMeaning,
  holder: say.termHolderMeaning,
  pocket: say.termPocketMeaning,
  notch: say.termNotchMeaning,
  window: say.termWindowMeaning,
  "base-frame": say.termBaseFrameMeaning,
  glazing: say.termGlazingMeaning,
  hole: say.termHoleMeaning,
  motif: say.termMotifMeaning,
  packet: say.termPacketMeaning,
};
