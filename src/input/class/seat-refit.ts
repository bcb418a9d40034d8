import type { Kit } from "../../core/kit/kit.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { SeatMatter } from "./table-seats.ts";

/** What the seat's book and the class's units change of its kit; what is the same as the kit's own is left out, so that addresses stay short. */
export function refitOf(seat: SeatMatter, kit: Kit, units: UnitSystem): Refit {
  const { book, fit: { opening, ...fit } = {}, light } = seat;
  const wish = defined({
    ...book,
    ...fit,
    openingDegrees: opening,
    units,
    lightDiameter: kit.light && light?.diameter,
    lightHeight: kit.light && light?.height,
  });
  const { pageOneLeaf, plates, direction } = kit.book;
  const own: Refit = { pageOneLeaf, plates, direction, units: kit.units };
  const changed = Object.entries(wish).filter(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(own[key as keyof Refit]),
  );
  return Object.fromEntries(changed);
}

/** Without what is undefined. */
export function defined<T extends object>(object: T): T {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as T;
}
