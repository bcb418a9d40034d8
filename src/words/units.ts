import type { UnitSystem } from "../core/units/length.ts";
import * as say from "./messages.ts";

/** The name of a system's unit in the plural: `millimetres`. */
export function unitName(units: UnitSystem): string {
  return units === "mm" ? say.kitMillimetres() : say.kitInches();
}
