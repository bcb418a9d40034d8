import type { BenchPlan } from "../../../core/bench/bench-plan.ts";
import { isTicked, type Progress } from "../../../core/bench/progress.ts";
import { num, tag } from "../svg-text.ts";

/** How far the work is: a ribbon with a cell for each leaf, filled where it is ticked, parted at the batches. One unit a leaf. */
export function ribbon(plan: BenchPlan, progress: Progress): string {
  const { stops } = plan;
  const cells = runsOf(stops.map((leaf) => isTicked(progress, leaf))).map(([from, to]) =>
    tag("rect", { class: "ribbon-done", x: from, y: 2, width: to - from, height: 8 }),
  );
  const parts = plan.batches.map((batch) => {
    const x = stops.indexOf(batch.first.leaf);
    return mark("ribbon-batch", x, 0.3, stops.length);
  });
  const lost = plan.pattern.lostLeaves.map((leaf) => {
    const x = stops.findIndex((stop) => stop > leaf);
    return mark("ribbon-lost", x < 0 ? stops.length : x, 0.8, stops.length);
  });
  const here = stops.indexOf(progress.at);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(stops.length)} 12" preserveAspectRatio="none" aria-hidden="true" focusable="false">`,
    tag("rect", { class: "ribbon-all", x: 0, y: 2, width: stops.length, height: 8 }),
    ...cells,
    ...parts,
    ...lost,
    mark("ribbon-here", here + 0.5, 2.2, stops.length),
    "</svg>",
  ].join("");
}

/** An upright mark about a place, whole also at the ends of the ribbon. */
function mark(name: string, middle: number, width: number, length: number): string {
  const x = Math.max(0, Math.min(middle - width / 2, length - width));
  return tag("rect", { class: name, x, y: 0, width, height: 12 });
}

/** Runs of true cells: first, and one past the last. */
export function runsOf(cells: readonly boolean[]): [number, number][] {
  const runs: [number, number][] = [];
  cells.forEach((cell, i) => {
    const last = runs.at(-1);
    if (!cell) return;
    if (last && last[1] === i) last[1] = i + 1;
    else runs.push([i, i + 1]);
  });
  return runs;
}
