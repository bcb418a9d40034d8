import type { Kit } from "../kit/kit.ts";
import type { AnyPattern } from "../pattern/corner-pattern.ts";
import type { Counts } from "../plan/effort.ts";
import { cornerWork } from "../steps/corner-work.ts";
import { cornerSupplies } from "./corner-supplies.ts";
import { suppliesOf } from "./supplies.ts";
import type { Supply } from "./supply.ts";

/** Everything that a kit needs, whichever way its leaves are made. */
export function suppliesOfAny(kit: Kit, pattern: AnyPattern, counts: Counts): Supply[] {
  return pattern.corner ? cornerSupplies(kit, cornerWork(kit, pattern)) : suppliesOf(kit, pattern, counts);
}
