import type { BenchItem } from "../../core/bench/bench-item.ts";
import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { Desk } from "../../core/bench/desk.ts";
import { doItem, doUntimed, isItemDone, undoItem } from "../../core/bench/item-done.ts";
import { touchClock } from "../../core/bench/pace.ts";
import type { Progress } from "../../core/bench/progress.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { stageOf } from "../../core/steps/stages.ts";
import { stepItem } from "../../output/parts/steps.ts";
import * as say from "../../words/messages.ts";
import { make } from "../shared/dom.ts";
import type { Change } from "./change.ts";
import { sheetsOf } from "./sheets.ts";

/** Fills a stage's steps for the piece's own book, with their drawings. */
export async function fillSteps(
  stage: HTMLElement,
  { plan, progress }: Desk,
  cautions: readonly Caution[],
): Promise<void> {
  const steps = await sheetsOf(plan).steps(plan);
  const own = plan.work.flatMap((step, i) =>
    stageOf(step) === stage.dataset["stage"] ? [{ step, number: i + 1 }] : [],
  );
  const items = own.map(({ number }) => stepItem(steps[number - 1]!, number, cautions));
  const list = stage.querySelector(".steps")!;
  list.innerHTML = items.join("");
  for (const { step, number } of own) {
    const item = wholeItem(plan, step.id);
    if (item) list.querySelector(`#step-${number} .step > div`)!.append(tick(item, progress));
  }
}

/** A step that is done at once can be ticked here, too. */
export function bindSteps(stage: HTMLElement, desk: () => Desk, change: Change): void {
  stage.addEventListener("change", ({ target }) => {
    const { checked, dataset } = target as HTMLInputElement;
    const item = desk().plan.places.find((place) => place.item?.name === dataset["item"])?.item;
    if (item) change((progress) => (checked ? done(progress, item) : undoItem(progress, item)));
  });
}

/** What was ticked elsewhere meanwhile. */
export function showTicks(stage: HTMLElement, { plan, progress }: Desk): void {
  for (const box of stage.querySelectorAll<HTMLInputElement>("[data-item]")) {
    const item = plan.places.find((place) => place.item?.name === box.dataset["item"])?.item;
    box.checked = item !== undefined && isItemDone(progress, item);
  }
}

/** From now on glue dries; nothing else that is ticked here was timed. */
function done(progress: Progress, item: BenchItem): Progress {
  if (item.step.dries === 0) return doUntimed(progress, [item]);
  return doItem({ ...progress, clock: touchClock(progress.clock, Date.now()) }, item);
}

function wholeItem({ places }: BenchPlan, step: string): BenchItem | undefined {
  return places.find(({ item }) => item?.kind === "step" && item.step.id === step)?.item;
}

function tick(item: BenchItem, progress: Progress): HTMLElement {
  const box = make("input", "");
  box.type = "checkbox";
  box.dataset["item"] = item.name;
  box.checked = isItemDone(progress, item);
  return make("label", "step-done", box, " ", say.makeItemDone());
}
