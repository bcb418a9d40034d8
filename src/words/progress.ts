import type { ProgressFailure } from "../core/bench/progress-failure.ts";
import { BOUNDS } from "../core/kit/bounds.ts";
import * as say from "./messages.ts";

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
    case "twice":
      return say.progressTwice({ place: failure.path, leaf: failure.leaf });
    case "wrong-value":
      return say.progressWrongValue({
        place: failure.path === "" ? say.progressWholeFile() : failure.path,
        given: failure.given ?? say.progressMissing(),
        allowed: failure.allowed,
        least: BOUNDS.leaf.least,
        most: BOUNDS.leaf.most,
      });
  }
}
