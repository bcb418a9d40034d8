import type { Failure } from "../../core/findings/failure.ts";
import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../messages.ts";
import { whyText } from "./failure-why.ts";

/** Why a kit does not open at the bench; of one that fits its book, but is worked in another way, that alone. */
export function benchMisfitText(failure: Failure, kit: Kit): string {
  const why = whyText(failure, kit);
  return failure.kind === "needs-knife" ? why : say.benchMisfit({ why });
}
