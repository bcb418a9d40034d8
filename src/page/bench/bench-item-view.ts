import type { BenchItem } from "../../core/bench/bench-item.ts";
import type { Desk } from "../../core/bench/desk.ts";
import { itemCard } from "../../output/views/item-card.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";

/** Writes work beside the leaves into the page's skeleton; gives its words to be spoken. */
export function renderItem(root: HTMLElement, { plan, progress, units }: Desk, item: BenchItem): string {
  const { of, title, lines, tools, time } = itemCard(plan, progress, item, units);
  part(root, "big-kind").textContent = of;
  part(root, "big").textContent = title;
  part(root, "leaf").textContent = "";
  part(root, "border").textContent = time;
  part(root, "step").replaceChildren(
    ...lines.map((line) => make("p", "", line)),
    ...(tools === "" ? [] : [make("p", "tools", make("b", "", say.stepTools()), ` ${tools}`)]),
  );
  return [`${title}.`, ...lines].join(" ");
}
