import type { Doubt } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import { flapReach } from "../spans/fold-style.ts";

/** How far a level's flap and its folded edges reach, mm. */
export interface LevelReach {
  readonly level: number;
  /** Paper left between the flap's end and the clearance at the gutter; never negative in a kit that fits. */
  readonly gutterRoom: number;
  /** How much of the level at the picture's side no folded edge of it reaches; 0 where all is reached. */
  readonly missing: number;
}

/** Flaps reach 2·d inward, in stepped folds 2·d − d₁ behind the front level; what is missing at the side is the pattern's doubt. */
export function levelReaches({ levels, book, fit }: Kit, doubts: readonly Doubt[]): LevelReach[] {
  const depths = levels.map(({ depth }) => depth);
  return levels.map((_, k) => {
    const reach = flapReach(fit.foldStyle, depths, k + 1);
    const doubt = doubts.find((one) => one.kind === "level-out-of-reach" && one.level === k + 1);
    return {
      level: k + 1,
      gutterRoom: book.leafWidth - fit.gutterClearance - reach,
      missing: doubt?.kind === "level-out-of-reach" ? doubt.missing : 0,
    };
  });
}
