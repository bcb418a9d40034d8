import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { loadScript } from "../shared/load-script.ts";
import type { askBook } from "./ask-book.ts";

declare global {
  interface Window {
    leaflightMeasure?: typeof askBook;
  }
}

/** Asks for the book of a form, one measurement after the other; undefined where the reader leaves. @throws LoadError */
export async function measureBook(form: HTMLFormElement, site: string, units: UnitSystem): Promise<Refit | undefined> {
  if (!window.leaflightMeasure) await loadScript(`${site}assets/scripts/measure.js`, "measure");
  return window.leaflightMeasure?.(units, form);
}
