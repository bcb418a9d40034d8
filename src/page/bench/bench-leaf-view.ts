import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { leafEdge } from "../../output/drawing/bench/leaf-edge.ts";
import { levelTone } from "../../output/drawing/bench/level-tone.ts";
import { type LeafCard, leafCard } from "../../output/views/leaf-card.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";

/** Writes the leaf on the bench into the page's skeleton; gives its words to be spoken. */
export function renderLeaf(root: HTMLElement, desk: Desk): string {
  const card = leafCard(desk.plan, desk.progress.at, deskStyle(desk));
  part(root, "big-kind").textContent = card.bigIsPage ? say.benchBookPage() : card.row.bookPage;
  const big = part(root, "big");
  big.textContent = card.big;
  big.classList.toggle("long", card.big.length > 4);
  part(root, "leaf").textContent = String(card.row.leaf);
  part(root, "pattern-page").textContent = card.row.patternPage;
  part(root, "pattern-place").hidden = card.border !== "";
  part(root, "border").textContent = card.border;
  renderFolds(root, card, desk);
  part(root, "work-notes").replaceChildren(...card.notes.map((note) => make("li", "", note)));
  return card.spoken;
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
