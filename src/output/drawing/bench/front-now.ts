import type { BenchPlan } from "../../../core/bench/bench-plan.ts";
import { isTicked, type Progress } from "../../../core/bench/progress.ts";
import * as say from "../../../words/messages.ts";
import { columnsOf, frontInSmall, pictureArea, type SmallFront, WIDTH } from "../front/here.ts";
import { tag } from "../svg-text.ts";
import { runsOf } from "./ribbon.ts";

/** The width of the line where she is: of a hundredth of the drawing. */
const LINE = 2.4;

/** The front in small as it fills: folded leaves strong, all others pale, and a line at the leaf on the bench. It uses the symbol of the front. */
export function frontNow(front: SmallFront, { stops }: Pick<BenchPlan, "stops">, progress: Progress): string {
  const { top, height } = pictureArea(front);
  const open = runsOf(stops.map((leaf) => !isTicked(progress, leaf))).map(([from, to]) =>
    tag("rect", { class: "here-open", y: top, height, ...columnsOf(front, from, to) }),
  );
  const here = stops.indexOf(progress.at);
  const { x, width } = columnsOf(front, here, here + 1);
  const line = { y: top, height, x: Math.min(WIDTH - LINE, Math.max(0, x + width / 2 - LINE / 2)), width: LINE };
  const done = stops.filter((leaf) => isTicked(progress, leaf)).length;
  const words = say.benchFrontNow({ done, count: stops.length, percent: Math.round(x + width / 2) });
  return frontInSmall(front, [...open, tag("rect", { class: "here-now", ...line })], words);
}
