import type { UnitSystem } from "../../core/units/length.ts";

/** The key that the kit pages keep the reader's units under. */
const UNITS_KEY = "leaflight-units";

export function keptUnits(): UnitSystem | undefined {
  const units = read(UNITS_KEY);
  return units === "mm" || units === "in" ? units : undefined;
}

export function keepUnits(units: UnitSystem): void {
  write(UNITS_KEY, units);
}

/** A small choice of the reader's, such as whether the screen stays on. */
export function keptChoice(name: string): string | undefined {
  return read(`leaflight-${name}`);
}

export function keepChoice(name: string, value: string): void {
  write(`leaflight-${name}`, value);
}

function read(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function write(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
