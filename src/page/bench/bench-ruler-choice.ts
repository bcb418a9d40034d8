import type { UnitSystem } from "../../core/units/length.ts";
import { type Fineness, rulerStep } from "../../core/units/ruler.ts";
import { formatLength } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { keepChoice, keptChoice } from "./bench-store.ts";

const CHOICE = "ruler";

/** How fine her ruler is, or none. */
export type RulerChoice = Fineness | "off";

const FINENESSES: readonly Fineness[] = ["fine", "plain", "coarse"];

/** What she chose: a plain ruler until then. */
export function rulerChoice(): RulerChoice {
  const kept = keptChoice(CHOICE);
  return kept === "off" ? kept : (FINENESSES.find((one) => one === kept) ?? "plain");
}

/** The part of the menu that says how fine her ruler is; `changed` is called when it is another. Gives back what fills it for her units. */
export function bindRulers(dialog: HTMLDialogElement, host: BenchHost, changed: () => void): () => void {
  const select = part<HTMLSelectElement>(dialog, "ruler-step");
  select.addEventListener("change", () => {
    keepChoice(CHOICE, select.value);
    changed();
  });
  return () => fillRulers(select, host.desk.units);
}

function fillRulers(select: HTMLSelectElement, units: UnitSystem): void {
  const steps = FINENESSES.map((fineness) => [fineness, rulerStep(units, fineness)] as const);
  const different = steps.filter(([, step], i) => steps.findIndex(([, other]) => other === step) === i);
  const options = different.map(([fineness, step]) => option(fineness, formatLength(step, { units, step })));
  select.replaceChildren(...options, option("off", say.benchRulerOff()));
  const chosen = rulerChoice();
  select.value = different.some(([fineness]) => fineness === chosen) || chosen === "off" ? chosen : "plain";
}

function option(value: RulerChoice, words: string): HTMLOptionElement {
  const made = make("option", "", words);
  made.value = value;
  return made;
}
