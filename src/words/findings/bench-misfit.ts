import type { Failure } from "../../core/findings/failure.ts";
import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../messages.ts";
import { whyText } from "./failure-why.ts";

/** Why a kit does not open at the bench. */
export function benchMisfitText(failure: Failure, kit: Kit): string {
  return say.benchMisfit({ why: whyText(failure, kit) });
}
