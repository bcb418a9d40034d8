import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";
import type { Chip, LeafShown } from "./bench-face.ts";
import { faceOf } from "./face-of.ts";

/** Writes the leaf on the bench into the page's skeleton; gives its words to be spoken. */
export function renderLeaf(root: HTMLElement, desk: Desk): string {
  const { plan, progress } = desk;
  const shown = faceOf(plan).leaf(plan, progress.at, deskStyle(desk));
  part(root, "big-kind").textContent = shown.bigIsPage ? say.benchBookPage() : shown.bookPage;
  const big = part(root, "big");
  big.textContent = shown.big;
  big.classList.toggle("long", shown.big.length > 4);
  part(root, "leaf").textContent = String(progress.at);
  part(root, "pattern-page").textContent = shown.patternPage;
  part(root, "pattern-place").hidden = shown.border !== "";
  part(root, "border").textContent = shown.border;
  renderFolds(root, shown);
  part(root, "work-notes").replaceChildren(...shown.notes.map((note) => make("li", "", note)));
  return shown.spoken;
}

function renderFolds(root: HTMLElement, { folds, lines }: LeafShown): void {
  part(root, "fold-row").hidden = folds.length === 0;
  part(root, "folds").replaceChildren(...folds.map((one) => chip("li", one)));
  part(root, "levels").replaceChildren(...lines.map((line) => make("li", "", chip("b", line), " ", line.words)));
}

function chip(name: "li" | "b", { number, tone }: Chip): HTMLElement {
  const made = make(name, tone === undefined ? "chip order" : "chip", String(number));
  if (tone !== undefined) made.style.setProperty("--tone", tone);
  return made;
}

/** Draws the leaf to the space that the page leaves for it. */
export function renderEdge(root: HTMLElement, desk: Desk): void {
  const place = part(root, "edge");
  const { width, height } = place.getBoundingClientRect();
  if (width < 40 || height < 40) return;
  const space = { width: Math.floor(width), height: Math.floor(height) };
  place.innerHTML = faceOf(desk.plan).edge(desk.plan, desk.progress.at, deskStyle(desk), space);
}
