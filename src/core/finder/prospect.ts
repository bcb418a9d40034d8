import { type Failure, isContradiction } from "../findings/failure.ts";
import { tryFit } from "../pattern/compute.ts";
import { leastMargins } from "../refit/margins.ts";
import { mayHelp } from "../refit/offers.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import { Trials } from "../refit/trials.ts";
import { type KitOutline, outlinedKit } from "./outline.ts";

/** What a kit's outline tells of it in a reader's book: its picture lies in it, may with a change, or does not with any, so that the kit need not be asked. */
export type Prospect =
  | { readonly kind: "lies" | "change" }
  /** The same failure that the whole kit has. */
  | { readonly kind: "no"; readonly failure: Failure };

/** Looks at an outline as `judge` looks at the whole kit, as far as the picture's place goes. */
export function prospectOf(outline: KitOutline, book: Refit): Prospect {
  const kit = outlinedKit(outline);
  const failure = tryFit(refitKit(kit, book));
  if (!failure) return { kind: "lies" };
  if (isContradiction(failure)) return { kind: "no", failure };
  return mayHelp(new Trials(leastMargins(kit)), kit, book) ? { kind: "change" } : { kind: "no", failure };
}

/** The figures by which one book is like another. */
const COMPARED = ["leafHeight", "leafWidth", "blockThickness", "leaves"] as const;

/** How far a book is from the kit's own, which its author tried: the greatest ratio of two figures, as a logarithm; 0 for the same. */
export function farnessOf({ book: own }: KitOutline, book: Refit): number {
  return Math.max(...COMPARED.map((figure) => Math.abs(Math.log((book[figure] ?? own[figure]) / own[figure]))));
}
