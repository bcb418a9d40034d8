import { judge, type Verdict } from "../../core/finder/verdict.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { loadKitOf } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import type { Card } from "./finder-cards.ts";

/** Judges a kit for a book. A kit that cannot be judged does not keep the others from being judged. */
export async function verdictOf(card: Card, book: Refit, units: UnitSystem): Promise<Verdict> {
  try {
    const { kit } = await loadKitOf(card.slug, card.site);
    await new Promise((rest) => setTimeout(rest));
    return judge({ ...kit, units }, book);
  } catch (error) {
    if (!(error instanceof LoadError)) reportError(error);
    return { kind: "unknown", why: error instanceof LoadError ? say.loadKitData() : say.finderFailed() };
  }
}
