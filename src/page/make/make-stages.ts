import type { Desk } from "../../core/bench/desk.ts";
import type { StageProgress } from "../../core/bench/stage-progress.ts";
import type { Caution } from "../../core/plan/caution.ts";
import * as say from "../../words/messages.ts";
import { part } from "../bench/bench-dom.ts";
import type { Change } from "./change.ts";
import { showBatches } from "./make-batches.ts";
import { bindSteps, fillSteps, showTicks } from "./make-steps.ts";

/** The stages, each with how far it is; what is in one is filled for the piece's book when it is opened. */
export class StageList {
  readonly #stages: readonly HTMLDetailsElement[];
  readonly #cautions: readonly Caution[];
  readonly #change: Change;
  #desk: Desk | undefined;

  constructor(root: HTMLElement, cautions: readonly Caution[], change: Change) {
    this.#stages = [...root.querySelectorAll<HTMLDetailsElement>("[data-stage]")];
    this.#cautions = cautions;
    this.#change = change;
    for (const stage of this.#stages) {
      stage.addEventListener("toggle", () => this.#fill(stage));
      bindSteps(stage, () => this.#desk!, change);
    }
  }

  show(desk: Desk, stages: readonly StageProgress[]): void {
    this.#desk = desk;
    for (const place of this.#stages) {
      const stage = stages.find(({ id }) => id === place.dataset["stage"]);
      place.hidden = !stage;
      if (!stage) continue;
      const done = stage.done === stage.of;
      place.classList.toggle("done", done);
      place.classList.toggle("now", stage.now);
      part(place, "state").textContent = stateWords(stage);
      if (stage.id === "fold") showBatches(part(place, "batches"), desk, this.#change);
      showTicks(place, desk);
    }
  }

  /** The stage at which the work is stands open, the others closed. */
  openCurrent(): void {
    for (const stage of this.#stages) {
      stage.open = stage.classList.contains("now");
      void this.#fill(stage);
    }
  }

  async #fill(stage: HTMLDetailsElement): Promise<void> {
    if (!stage.open || !this.#desk) return;
    await fillSteps(stage, this.#desk, this.#cautions);
  }
}

function stateWords({ done, of, now }: StageProgress): string {
  const share = done === of ? say.makeStageDone() : say.makeStagePart({ done, count: of });
  return now ? `${share} · ${say.makeStageHere()}` : share;
}
