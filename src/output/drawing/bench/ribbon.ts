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
    return tag("rect", { class: "ribbon-batch", x: x - 0.15, y: 0, width: 0.3, height: 12 });
  });
  const lost = plan.pattern.lostLeaves.map((leaf) => {
    const x = stops.findIndex((stop) => stop > leaf);
    return tag("rect", { class: "ribbon-lost", x: (x < 0 ? stops.length : x) - 0.4, y: 0, width: 0.8, height: 12 });
  });
  const here = stops.indexOf(progress.at);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(stops.length)} 12" preserveAspectRatio="none" aria-hidden="true" focusable="false">`,
    tag("rect", { class: "ribbon-all", x: 0, y: 2, width: stops.length, height: 8 }),
    ...cells,
    ...parts,
    ...lost,
    tag("rect", { class: "ribbon-here", x: here - 0.6, y: 0, width: 2.2, height: 12 }),
    "</svg>",
  ].join("");
}

/** Runs of true cells: first, and one past the last. */
function runsOf(cells: readonly boolean[]): [number, number][] {
  const runs: [number, number][] = [];
  cells.forEach((cell, i) => {
    const last = runs.at(-1);
    if (!cell) return;
    if (last && last[1] === i) last[1] = i + 1;
    else runs.push([i, i + 1]);
  });
  return runs;
}
