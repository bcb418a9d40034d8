import { gateBefore, isFinished } from "../../core/bench/bench-plan.ts";
import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { remainingTime, workedAt } from "../../core/bench/pace.ts";
import { isTicked } from "../../core/bench/progress.ts";
import { leafEdge } from "../../output/drawing/bench/leaf-edge.ts";
import { levelTone } from "../../output/drawing/bench/level-tone.ts";
import { ribbon } from "../../output/drawing/bench/ribbon.ts";
import { type LeafCard, leafCard } from "../../output/views/leaf-card.ts";
import { gateAnswer, timeWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";

/** Writes the leaf on the bench into the page's skeleton. */
export function renderLeaf(root: HTMLElement, desk: Desk): LeafCard {
  const card = leafCard(desk.plan, desk.progress.at, deskStyle(desk));
  part(root, "big-kind").textContent = card.bigIsPage ? say.benchBookPage() : card.row.bookPage;
  const big = part(root, "big");
  big.textContent = card.big;
  big.classList.toggle("long", card.big.length > 4);
  part(root, "leaf").textContent = String(card.row.leaf);
  part(root, "pattern-page").textContent = card.row.patternPage;
  part(root, "pattern-place").hidden = card.border !== "";
  const done = part<HTMLInputElement>(root, "done");
  done.checked = isTicked(desk.progress, card.row.leaf);
  part(root, "stage").classList.toggle("ticked", done.checked);
  part(root, "border").textContent = card.border;
  renderFolds(root, card, desk);
  part(root, "work-notes").replaceChildren(...card.notes.map((note) => make("li", "", note)));
  renderCount(root, desk);
  renderBar(root, card, desk);
  return card;
}

function renderFolds(root: HTMLElement, card: LeafCard, desk: Desk): void {
  const chips = card.row.folds.map((level) => {
    const chip = make("li", "chip", String(level));
    chip.style.setProperty("--tone", levelTone(desk.plan.pattern, level));
    return chip;
  });
  part(root, "folds").replaceChildren(...chips);
  const levels = card.levels.map((level) => {
    const disc = make("b", "chip", String(level.number));
    disc.style.setProperty("--tone", levelTone(desk.plan.pattern, level.number));
    return make("li", "", disc, " ", level.words);
  });
  part(root, "levels").replaceChildren(...levels);
}

/** Draws the edge to the space that the page leaves for it. */
export function renderEdge(root: HTMLElement, desk: Desk): void {
  const card = leafCard(desk.plan, desk.progress.at, deskStyle(desk));
  const place = part(root, "edge");
  const { width, height } = place.getBoundingClientRect();
  if (width < 40 || height < 40) return;
  place.innerHTML = leafEdge(card, desk.plan.pattern, desk.units, {
    width: Math.floor(width),
    height: Math.floor(height),
  });
}

/** Running count, ribbon and times; called again as time goes by. */
export function renderCount(root: HTMLElement, desk: Desk): void {
  const { plan, progress } = desk;
  const done = plan.stops.filter((leaf) => isTicked(progress, leaf)).length;
  const place = plan.stops.indexOf(progress.at) + 1;
  part(root, "count").textContent = say.benchPlace({ place, count: plan.stops.length });
  part(root, "ticked").textContent = say.benchDoneCount({ count: done });
  part(root, "time").textContent = timesOf(desk, done);
  part(root, "ribbon").innerHTML = ribbon(plan, progress);
}

/** Working time so far, and what is left of it. */
function timesOf({ plan, progress }: Desk, done: number): string {
  const worked = timeWords(workedAt(progress.clock, Date.now()), "exact");
  if (done === plan.stops.length) return say.benchTimeNoneLeft({ worked });
  const { ms, own } = remainingTime(progress, plan.estimates);
  const left = timeWords(ms, "about");
  return own ? say.benchTimeOwnPace({ worked, left }) : say.benchTimeEstimated({ worked, left });
}

/** The words of the main button follow what is next. */
function renderBar(root: HTMLElement, card: LeafCard, desk: Desk): void {
  const { plan, progress } = desk;
  const gate = gateBefore(plan, progress, progress.at);
  const ticked = isTicked(progress, progress.at);
  const ended = card.place === card.places && isFinished(plan, progress);
  part(root, "go-words").textContent = gate ? gateAnswer(gate.kind) : stepWords(ticked, ended);
  part<HTMLButtonElement>(root, "go").disabled = ended;
  part(root, "go").classList.toggle("asking", gate !== undefined);
  part<HTMLButtonElement>(root, "back").disabled = card.place === 1;
  part<HTMLButtonElement>(root, "next").disabled = card.place === card.places;
}

function stepWords(ticked: boolean, ended: boolean): string {
  if (ended) return say.benchAllDone();
  return ticked ? say.benchGoOn() : say.benchDone();
}
