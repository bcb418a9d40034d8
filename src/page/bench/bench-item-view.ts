import type { BenchItem } from "../../core/bench/bench-item.ts";
import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { itemCard } from "../../output/views/item-card.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";
import { faceOf } from "./face-of.ts";

/** Writes work beside the leaves into the page's skeleton; gives its words to be spoken. */
export function renderItem(root: HTMLElement, desk: Desk, item: BenchItem): string {
  const { plan, progress } = desk;
  const face = faceOf(plan);
  const { of, title, lines, leaves, parts, tools, time, number } = itemCard(plan, progress, item, {
    style: deskStyle(desk),
    stepText: face.stepText,
  });
  part(root, "big-kind").textContent = of;
  part(root, "big").textContent = title;
  part(root, "leaf").textContent = "";
  part(root, "border").textContent = time;
  const figure = make("div", "step-figure");
  part(root, "step").replaceChildren(
    ...lines.map((line) => make("p", "", line)),
    make(
      "ul",
      "step-leaves",
      ...leaves.map(({ leaf, where }) => make("li", "", make("span", "", leaf), make("b", "", where))),
    ),
    ...needs(say.stepParts(), parts),
    ...needs(say.stepTools(), tools),
    figure,
    make("p", "", stepLink(number)),
  );
  void face.stepFigure(item.step.id, plan).then((svg) => {
    figure.innerHTML = svg;
  });
  const places = leaves.map(({ leaf, where }) => `${leaf}: ${where}.`);
  return [`${title}.`, ...lines, ...places].join(" ");
}

function needs(heading: string, named: string): HTMLElement[] {
  return named === "" ? [] : [make("p", "needs", make("b", "", heading), ` ${named}`)];
}

/** To the step with its drawing. */
function stepLink(number: number): HTMLAnchorElement {
  const link = make("a", "as-button", say.benchStepPage());
  link.href = `../index.html${location.search}#step-${number}`;
  return link;
}
