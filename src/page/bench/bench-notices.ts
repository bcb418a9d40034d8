import { isFinished, untickedBefore } from "../../core/bench/bench-plan.ts";
import { holdingOf } from "../../core/bench/calibration.ts";
import { showLeaf, tickUntimed } from "../../core/bench/progress.ts";
import { endWords, leafWords } from "../../words/bench.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { around, button, make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** So many leaves are named one by one. */
const NAMED = 3;

/** Shows what is out of the ordinary: what stands there anyway, leaves left out or open before this one, the end of the work. */
export function renderNotices(root: HTMLElement, host: BenchHost, standing: readonly string[]): void {
  part(root, "notices").replaceChildren(
    ...standing.map((words) => make("p", "notice", words)),
    ...leftOutNotices(host),
    ...openNotice(host),
    ...endNotice(host),
  );
}

function leftOutNotices(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  const before = plan.stops[plan.stops.indexOf(progress.at) - 1] ?? 0;
  return plan.pattern.lostLeaves
    .filter((leaf) => leaf > before && leaf < progress.at)
    .map((leaf) =>
      make(
        "p",
        "notice lost",
        say.benchLeftOutBefore({ leaf: leafWords(plan, leaf) }),
        " ",
        button(say.benchPutBack(), "quiet", () => host.openRecovery(leaf)),
      ),
    );
}

function openNotice(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  const open = untickedBefore(plan, progress, progress.at);
  const [first] = open;
  if (first === undefined) return [];
  const words =
    open.length <= NAMED
      ? say.benchNotTicked({ leaves: listText(open.map((leaf) => leafWords(plan, leaf))) })
      : say.benchNotTickedMany({ count: open.length, first: leafWords(plan, first) });
  return [
    make(
      "p",
      "notice",
      words,
      " ",
      button(say.benchGoThere(), "quiet", () => host.move((one) => showLeaf(one, first))),
      " ",
      button(say.benchAreFolded(), "quiet", () => host.move((one) => tickUntimed(one, open))),
    ),
  ];
}

function endNotice(host: BenchHost): HTMLElement[] {
  const { plan, progress, units } = host.desk;
  if (!isFinished(plan, progress)) return [];
  const link = make("a", "", say.benchEndStepsLink());
  link.href = `../index.html${location.search}#steps`;
  return [
    make(
      "p",
      "notice end",
      make("strong", "", say.benchEnd({ count: plan.stops.length })),
      ` ${endWords(holdingOf(plan.pattern), units).join(" ")} `,
      ...around((steps) => say.benchEndSteps({ steps }), link),
    ),
  ];
}
