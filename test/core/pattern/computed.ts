import type { Failure } from "../../../src/core/findings/failure.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";

/** The pattern of a kit that fits its book. @throws Error with the kind of failure where it does not */
export function patternOf(kit: Kit): Pattern {
  const result = computePattern(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return result.pattern;
}

/** Why a kit does not fit its book. @throws Error where it fits */
export function failureOf(kit: Kit): Failure {
  const result = computePattern(kit);
  if (result.fits) throw new Error("it fits");
  return result.finding;
}
