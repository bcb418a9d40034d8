import { deskStyle } from "../../core/bench/desk.ts";
import { doUntimed } from "../../core/bench/item-done.ts";
import { isFinished, openBefore, placeNow } from "../../core/bench/moving.ts";
import type { Place } from "../../core/bench/places.ts";
import { type Progress, showPlace, tickUntimed } from "../../core/bench/progress.ts";
import { itemName } from "../../output/views/item-name.ts";
import { holdWidthWords, leafWords } from "../../words/bench.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { button, make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** So many leaves are named one by one. */
const NAMED = 3;

/** Shows what is out of the ordinary: what stands there anyway, leaves left out or open before this one, the end of the work. */
export function renderNotices(root: HTMLElement, host: BenchHost, standing: readonly string[]): void {
  part(root, "notices").replaceChildren(
    ...standing.map((words) => make("p", "notice", words)),
    ...leftOutNotices(host),
    ...openNotices(host),
    ...widthNotice(host),
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

/** What comes before the place on the bench and is not done: leaves, and apart from them other work. */
function openNotices(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  const style = deskStyle(host.desk);
  const open = openBefore(plan, progress, placeNow(plan, progress));
  const leaves = open.filter(({ item }) => !item);
  const items = open.flatMap(({ item }) => item ?? []);
  const named = leaves.map(({ leaf }) => leafWords(plan, leaf));
  const steps = items.map((item) => itemName(plan, item, style));
  return [
    ...askedAbout(host, leaves[0], {
      words:
        named.length <= NAMED
          ? say.benchNotTicked({ leaves: listText(named) })
          : say.benchNotTickedMany({ count: named.length, first: named[0]! }),
      answer: say.benchAreFolded(),
      tick: (one) =>
        tickUntimed(
          one,
          leaves.map(({ leaf }) => leaf),
        ),
    }),
    ...askedAbout(
      host,
      open.find(({ item }) => item),
      {
        words:
          steps.length <= NAMED
            ? say.benchNotDone({ steps: listText(steps) })
            : say.benchNotDoneMany({ count: steps.length, first: steps[0]! }),
        answer: say.benchAreDone(),
        tick: (one) => doUntimed(one, items),
      },
    ),
  ];
}

/** What may be done about open work. */
interface Asked {
  readonly words: string;
  readonly answer: string;
  readonly tick: (progress: Progress) => Progress;
}

function askedAbout(host: BenchHost, first: Place | undefined, { words, answer, tick }: Asked): HTMLElement[] {
  if (!first) return [];
  return [
    make(
      "p",
      "notice",
      words,
      " ",
      button(say.benchGoThere(), "quiet", () => host.move((one) => showPlace(one, first))),
      " ",
      button(answer, "quiet", () => host.move(tick)),
    ),
  ];
}

/** Where the book is opened and its flaps push it wider than the picture wants it. */
function widthNotice({ desk }: BenchHost): HTMLElement[] {
  const { item } = placeNow(desk.plan, desk.progress);
  const { holds, restingWidth } = desk.plan.holding;
  if (item?.step.id !== "hold" || holds) return [];
  const width = holdWidthWords(restingWidth, desk.units);
  return [make("p", "notice", `${say.benchWider({ width })} ${say.benchHoldWidthMeaning()}`)];
}

function endNotice(host: BenchHost): HTMLElement[] {
  const { plan, progress } = host.desk;
  if (!isFinished(plan, progress)) return [];
  const folded = make("strong", "", say.benchEnd({ count: plan.stops.length }));
  return [make("p", "notice end", folded, ` ${say.benchEndRest()}`)];
}
