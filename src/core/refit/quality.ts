import { type GraveDoubt, isGrave } from "../findings/doubt.ts";
import type { FitResult } from "../pattern/compute.ts";
import type { PatternBase } from "../pattern/pattern.ts";
import { keepsFree, type Margins, marginsOf } from "./margins.ts";

/** How well a kit that fits a book comes out in it, best first: well, something is to be looked at, or poorly. */
export const QUALITIES = ["fits", "check", "poor"] as const;

export type Quality = (typeof QUALITIES)[number];

/** Why it is no good fit: what may disappoint, or less paper at head and tail than the kit keeps free. Lengths mm. */
export type Reason = GraveDoubt | ({ readonly kind: "narrow-margins" } & Margins);

export interface Judgement {
  readonly kind: Quality;
  readonly reasons: readonly Reason[];
}

/** Share by which a picture may come out wider or narrower than drawn before it is poor. */
const OUT_OF_SHAPE = 0.05;

/** Judges a fit; `least` is what its kit keeps free. */
export function judgeFit(
  { pattern, findings }: Pick<Extract<FitResult<PatternBase>, { readonly fits: true }>, "pattern" | "findings">,
  least: Margins,
): Judgement {
  const margins = marginsOf(pattern.fit, pattern.book.leafHeight);
  const reasons: Reason[] = findings.filter(isGrave);
  if (!keepsFree(margins, least)) reasons.push({ kind: "narrow-margins", ...margins });
  if (reasons.length === 0) return { kind: "fits", reasons };
  return { kind: reasons.some(isPoor) ? "poor" : "check", reasons };
}

/** What no care at the table makes good. */
function isPoor(reason: Reason): boolean {
  switch (reason.kind) {
    case "coarse":
    case "light-wider-than-hole":
      return true;
    case "springs-open":
      return reason.resting > Math.PI;
    case "out-of-shape":
      return Math.abs(reason.stretch - 1) > OUT_OF_SHAPE;
    default:
      return false;
  }
}
