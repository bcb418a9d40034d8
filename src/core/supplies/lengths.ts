import type { SupplyUnit } from "../kit/supply-id.ts";
import { MM_PER_INCH, tidy, type UnitSystem } from "../units/length.ts";

/** How lengths are bought: the unit and its length, mm. */
export const BOUGHT_BY: Readonly<Record<UnitSystem, { readonly unit: SupplyUnit; readonly length: number }>> = {
  mm: { unit: "m", length: 1000 },
  in: { unit: "ft", length: 12 * MM_PER_INCH },
};

/** Steps to the unit in which lengths are bought: 0.1 m, or 3 in. */
const STEPS: Readonly<Partial<Record<SupplyUnit, number>>> = { m: 10, ft: 4 };

/** A quantity as it is bought, in its unit: a length up to the next step, other things whole. */
export function toBuy(amount: number, unit: SupplyUnit | undefined): number {
  const steps = (unit && STEPS[unit]) ?? 1;
  return Math.ceil(tidy(amount * steps)) / steps;
}

/** Whether a supply is measured out and not counted. */
export function isLength(unit: SupplyUnit | undefined): boolean {
  return unit !== undefined && unit in STEPS;
}
