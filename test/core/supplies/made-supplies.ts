import type { Kit, OwnSupply } from "../../../src/core/kit/kit.ts";
import type { SupplyId } from "../../../src/core/kit/supply-id.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import type { Counts } from "../../../src/core/plan/effort.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import type { Supply } from "../../../src/core/supplies/supply.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePattern, madeWindow } from "../plan/made-pattern.ts";

/** A kit on which there is nothing to do. */
export const NOTHING: Counts = {
  leaves: 0,
  scores: 0,
  marks: 0,
  cuts: 0,
  folds: 0,
  checks: 0,
  tacks: 0,
  notches: 0,
  parts: 0,
};

/** The made window’s pattern: what supplies are counted for unless a test gives another. */
export const WINDOWED = madePattern({ window: madeWindow() });

/** What a test gives: of kit and counts, single figures. */
export interface Given {
  readonly kit?: Partial<Kit>;
  readonly pattern?: Pattern;
  readonly counts?: Partial<Counts>;
}

export function listOf({ kit, pattern = WINDOWED, counts = { parts: 9 } }: Given): Supply[] {
  return suppliesOf(madeKit(kit), pattern, { ...NOTHING, ...counts });
}

/** The supplies of an id. */
export const all = (given: Given, id: SupplyId): Supply[] => listOf(given).filter((supply) => supply.id === id);

/** The one supply of an id. @throws Error where there is none, or more */
export const one = (given: Given, id: SupplyId): Supply => {
  const found = all(given, id);
  if (found.length !== 1) throw new Error(`${found.length} supplies ${id}`);
  return found[0]!;
};

/** A supply that the kit’s author states. */
export const own = (item: string, changes: Partial<OwnSupply> = {}): OwnSupply => ({
  id: undefined,
  item,
  quantity: 1,
  unit: "handfuls",
  unitId: undefined,
  price: undefined,
  ...changes,
});
