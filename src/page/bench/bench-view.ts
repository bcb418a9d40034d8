import type { Desk } from "../../core/bench/desk.ts";
import { gateBefore } from "../../core/bench/gates.ts";
import { isDone, isFinished, placeNow } from "../../core/bench/moving.ts";
import { ribbon } from "../../output/drawing/bench/ribbon.ts";
import { gateAnswer } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { part } from "./bench-dom.ts";
import { renderItem } from "./bench-item-view.ts";
import { renderLeaf } from "./bench-leaf-view.ts";
import { renderTimes } from "./bench-times.ts";

/** Writes what lies on the bench into the page's skeleton; gives its words to be spoken. */
export function renderPlace(root: HTMLElement, desk: Desk): string {
  const place = placeNow(desk.plan, desk.progress);
  const stage = part(root, "stage");
  stage.classList.toggle("of-step", place.item !== undefined);
  const spoken = place.item ? renderItem(root, desk, place.item) : renderLeaf(root, desk);
  const done = part<HTMLInputElement>(root, "done");
  done.checked = isDone(desk.progress, place);
  stage.classList.toggle("ticked", done.checked);
  renderCount(root, desk);
  renderBar(root, desk);
  return spoken;
}

/** Running count, ribbon and times; called again as time goes by. */
export function renderCount(root: HTMLElement, desk: Desk): void {
  const { plan, progress } = desk;
  const here = placeNow(plan, progress);
  const alike = plan.places.filter((place) => (place.item === undefined) === (here.item === undefined));
  const told = { place: alike.indexOf(here) + 1, count: alike.length };
  part(root, "count").textContent = here.item ? say.benchStepPlace(told) : say.benchPlace(told);
  const done = alike.filter((place) => isDone(progress, place)).length;
  part(root, "ticked").textContent = say.benchDoneCount({ count: done });
  renderTimes(root, desk);
  part(root, "ribbon").innerHTML = ribbon(plan, progress);
}

/** The words of the main button follow what is next. */
function renderBar(root: HTMLElement, { plan, progress }: Desk): void {
  const place = placeNow(plan, progress);
  const gate = gateBefore(plan, progress, place);
  const ended = place === plan.places.at(-1) && isFinished(plan, progress);
  part(root, "go-words").textContent = gate ? gateAnswer(gate.kind) : stepWords(isDone(progress, place), ended);
  part<HTMLButtonElement>(root, "go").disabled = ended;
  part(root, "go").classList.toggle("asking", gate !== undefined);
  part<HTMLButtonElement>(root, "back").disabled = place === plan.places[0];
  part<HTMLButtonElement>(root, "next").disabled = place === plan.places.at(-1);
}

function stepWords(ticked: boolean, ended: boolean): string {
  if (ended) return say.benchAllDone();
  return ticked ? say.benchGoOn() : say.benchDone();
}
