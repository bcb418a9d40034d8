import type { Desk } from "../../core/bench/desk.ts";
import { type Progress, passGate } from "../../core/bench/progress.ts";
import { suppliesToTick, supplyTick } from "../../output/parts/make-parts.ts";
import { supplyView } from "../../output/views/supply-view.ts";
import * as say from "../../words/messages.ts";
import { part } from "../bench/bench-dom.ts";
import type { Change } from "./change.ts";
import { sheetsOf } from "./sheets.ts";

/** What is laid out before the work begins; the piece remembers what is at hand. */
export class SupplyList {
  readonly #root: HTMLElement;
  /** The pattern that the list stands for. */
  #shown: Desk["plan"]["pattern"] | undefined;

  constructor(root: HTMLElement, change: Change) {
    this.#root = root;
    part(root, "supply-list").addEventListener("change", ({ target }) => {
      const { checked, dataset } = target as HTMLInputElement;
      const name = dataset["tick"];
      if (name !== undefined) change((progress) => (checked ? passGate(progress, name) : without(progress, name)));
    });
  }

  show({ plan, progress: { passed } }: Desk): void {
    const { kit, pattern } = plan;
    const supplies = sheetsOf(plan)
      .supplies(plan)
      .map((supply) => supplyView(supply, kit.units));
    const done = supplies.filter((supply) => passed.includes(supplyTick(supply))).length;
    part(this.#root, "at-hand").textContent = say.makeSuppliesPart({ done, count: supplies.length });
    if (this.#shown === pattern) return;
    this.#shown = pattern;
    part(this.#root, "supply-list").innerHTML = String(suppliesToTick(supplies, passed));
  }
}

function without(progress: Progress, name: string): Progress {
  return { ...progress, passed: progress.passed.filter((one) => one !== name) };
}
