import type { ProgressFailure, ProgressValue } from "../core/bench/progress-failure.ts";
import { BOUNDS } from "../core/kit/bounds.ts";
import { PIECE_LENGTHS } from "../core/piece/piece.ts";
import * as say from "./messages.ts";

/** Letters of texts with a bound. */
const LETTERS: Partial<Record<ProgressValue, number>> = { ...PIECE_LENGTHS, short: PIECE_LENGTHS.title };

/** Why progress cannot be used, in a sentence. */
export function progressFailure(failure: ProgressFailure): string {
  switch (failure.kind) {
    case "not-json":
      return say.progressNotJson();
    case "other-schema":
      return say.progressOtherSchema({ given: failure.given ?? say.progressMissing(), expected: failure.expected });
    case "other-kit":
      return say.progressOtherKit(failure);
    case "other-fit":
      return say.progressOtherFit();
    case "mixed-kits":
      return say.progressMixedKits({ place: failure.path, kit: failure.kit, given: failure.given });
    case "piece-twice":
      return say.progressPieceTwice({ place: failure.path });
    case "too-many":
      return say.progressTooMany({ most: failure.most });
    case "twice":
      return say.progressTwice({ place: failure.path, leaf: failure.leaf });
    case "wrong-value":
      return say.progressWrongValue({
        place: failure.path === "" ? say.progressWholeFile() : failure.path,
        given: failure.given ?? say.progressMissing(),
        allowed: failure.allowed,
        least: BOUNDS.leaf.least,
        most: BOUNDS.leaf.most,
        letters: LETTERS[failure.allowed] ?? 0,
      });
  }
}
