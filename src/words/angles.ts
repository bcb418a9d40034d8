import { toDegrees } from "../core/units/angle.ts";
import { tidy } from "../core/units/length.ts";
import * as say from "./messages.ts";
import { decimal } from "./numbers.ts";

/** An angle in degrees, to the tenth: `60.5°`; or as a whole bound, rounded to its safe side. */
export function angleText(radians: number, bound?: "floor" | "ceil"): string {
  const degrees = toDegrees(radians);
  return say.unitDegree({ degrees: bound ? String(Math[bound](degrees)) : decimal(String(tidy(degrees, 1))) });
}
