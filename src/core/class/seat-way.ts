import type { Kit } from "../kit/kit.ts";
import type { Refit } from "../refit/refit.ts";
import type { AwaitingSeat, Seat } from "./kit-class.ts";

/** Whether a seat makes its kit without a knife: its kit is made so, or its line asks for it. */
export function isKnifeFree({ kit, refit }: Pick<Seat, "kit" | "refit">): boolean {
  return (refit.foldStyle ?? kit.fit.foldStyle) === "corner";
}

/** What a seat keeps with any kit and any book: who has no knife gets none with another kit either. */
export function wayOfSeat(seat: Pick<Seat, "kit" | "refit">, kit: Kit): Pick<Refit, "foldStyle"> {
  return isKnifeFree(seat) && kit.fit.foldStyle !== "corner" ? { foldStyle: "corner" } : {};
}

/** Whether a seat whose book is still to come will make its kit without a knife. */
export function awaitsNoKnife({ kit, foldStyle }: AwaitingSeat): boolean {
  return (foldStyle ?? kit?.fit.foldStyle) === "corner";
}
