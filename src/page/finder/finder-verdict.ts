import { judge } from "../../core/finder/verdict.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { loadKitOf } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import type { Card, Judged } from "./finder-cards.ts";

/** Judges a kit for a book. A kit that cannot be judged does not keep the others from being judged. */
export async function verdictOf(card: Card, book: Refit, units: UnitSystem): Promise<Judged> {
  try {
    const { kit } = await loadKitOf(card.slug, card.site);
    await new Promise((rest) => setTimeout(rest));
    return { ...judge({ ...kit, units }, book), telling: { units, levels: kit.levels } };
  } catch (error) {
    const notLoaded = error instanceof LoadError;
    if (!notLoaded) reportError(error);
    return { kind: "unknown", cause: notLoaded ? "not-loaded" : "failed", telling: { units, levels: [] } };
  }
}
