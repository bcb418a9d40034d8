import type { Kit, Rates } from "../kit/kit.ts";
import type { SupplyId } from "../kit/supply-id.ts";
import type { WorkStep } from "../steps/work-step.ts";
import type { Supply } from "../supplies/supply.ts";
import type { KitClass } from "./kit-class.ts";

/** A stage of the work that a teacher may have ready. */
export type Ready = KitClass["ready"];

/**
 * A seat's kit as its packet shows it: sheets and waste are the class's, times are at the seat's pace with what is ready taken
 * off, and prices are the teacher's own affair.
 */
export function classKit(
  kit: Kit,
  plan: Pick<KitClass, "ready" | "fittingShare" | "sheets" | "waste">,
  pace: number,
): Kit {
  const { ready, fittingShare, sheets, waste } = plan;
  const shares: Partial<Rates> = {
    ...(ready.includes("scores") ? { score: 0 } : {}),
    ...(ready.includes("parts") ? { part: fittingShare } : {}),
  };
  return {
    ...kit,
    sheets,
    waste,
    rates: atPace(kit.rates, shares, pace),
    prices: {},
    supplies: kit.supplies.map(unpriced),
  };
}

function atPace({ first, ...rates }: Rates, shares: Partial<Rates>, pace: number): Rates {
  const own = Object.entries(rates).map(([stage, seconds]) => [
    stage,
    seconds * pace * (shares[stage as keyof Rates] ?? 1),
  ]);
  return { ...Object.fromEntries(own), first } as Rates;
}

function unpriced(supply: Kit["supplies"][number]): Kit["supplies"][number] {
  return { ...supply, price: undefined };
}

/** The steps that are left for a seat: with its score lines pressed it needs no gauge either. */
export function workLeft(work: readonly WorkStep[], ready: Ready): WorkStep[] {
  return work.filter((step) => step.ready === undefined || !ready.includes(step.ready));
}

/** What a seat still needs: nothing that only ready steps use, and card for the gauge and small pieces alone where parts are cut. */
export function suppliesLeft(supplies: readonly Supply[], work: readonly WorkStep[], ready: Ready): Supply[] {
  const [all, left] = [idsIn(work), idsIn(workLeft(work, ready))];
  const needed = supplies.filter(({ id }) => id === undefined || !all.has(id) || left.has(id));
  return ready.includes("parts") ? needed.map(withoutParts) : needed;
}

function idsIn(work: readonly WorkStep[]): ReadonlySet<SupplyId> {
  return new Set(work.flatMap(({ supplies }) => supplies));
}

function withoutParts(supply: Supply): Supply {
  const { reason } = supply;
  if (reason?.kind !== "card" || supply.quantity !== reason.gauge + reason.window) return supply;
  const { colours: _, ...rest } = reason;
  return { ...supply, quantity: reason.gauge, exact: reason.gauge, reason: { ...rest, window: 0, tooLarge: [] } };
}
