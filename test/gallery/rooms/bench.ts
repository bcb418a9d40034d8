import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import { beginProgress, type Progress } from "../../../src/core/bench/progress.ts";
import type { Pattern, PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import { MM_PER_INCH, stepFor } from "../../../src/core/units/length.ts";
import { frontNow } from "../../../src/output/drawing/bench/front-now.ts";
import { leafEdge } from "../../../src/output/drawing/bench/leaf-edge.ts";
import { ribbon } from "../../../src/output/drawing/bench/ribbon.ts";
import { type Ruler, rulerStrip } from "../../../src/output/drawing/bench/ruler-strip.ts";
import { frontSymbol } from "../../../src/output/drawing/front/here.ts";
import { leafCard } from "../../../src/output/views/leaf-card.ts";
import { valueFrom } from "../../core/findings/made.ts";
import { galleryKit, type KitName } from "../kits.ts";
import type { Scene } from "../scene.ts";

/** The room that a leaf's edge has on a tablet and on a small phone, CSS pixels. */
const TABLET = { width: 500, height: 640 };
const PHONE = { width: 296, height: 304 };

/** Chooses a leaf of a pattern. */
type Choice = (plan: BenchPlan<Pattern>) => PatternLeaf;

const withMostCuts: Choice = ({ pattern }) =>
  pattern.leaves.reduce((best, leaf) => (leaf.cuts.length > best.cuts.length ? leaf : best));
const firstBorder: Choice = ({ pattern }) => pattern.leaves[0]!;
const notched: Choice = ({ pattern }) =>
  pattern.leaves.find(
    (leaf) => leaf.cuts.length > 1 && pattern.pocket!.notches.some((notch) => notch.leaf === leaf.leaf),
  )!;

/** What the bench shows: the leaf under the hand, and how far the work is. */
export const bench: readonly Scene[] = [
  ...(["gull", "boat", "tide", "small", "tall", "plate"] as const).map((kit) => edge("most-cuts", kit, withMostCuts)),
  ...(["gull", "boat", "tide", "tall"] as const).map((kit) => edge("most-cuts-phone", kit, withMostCuts, PHONE)),
  ...(["gull", "boat"] as const).map((kit) => edge("border", kit, firstBorder)),
  ...(["moon", "plate"] as const).map((kit) => edge("notched", kit, notched)),
  progress("begun", "gull", (plan) => ticked(plan, 0)),
  progress("half", "moon", (plan) => ticked(plan, plan.stops.length / 2)),
  progress("lost", "small-lost", (plan) => ticked(plan, 20)),
  progress("done", "small", (plan) => ticked(plan, plan.stops.length)),
  front("begun", "gull", () => 0),
  front("half", "moon", ({ stops }) => stops.length / 2),
  front("half", "tide", ({ stops }) => Math.floor(stops.length / 2)),
  front("done", "small", ({ stops }) => stops.length),
  ruler("mm", { units: "mm", step: 1 }, 56.5),
  ruler("half-mm", { units: "mm", step: 0.5 }, 56.5),
  ruler("end", { units: "mm", step: 1 }, 4),
  ruler("eighths", { units: "in", step: MM_PER_INCH / 8 }, 56.35625),
  ruler("thirty-seconds", { units: "in", step: MM_PER_INCH / 32 }, 56.35625),
];

function edge(what: string, name: KitName, choose: Choice, space = TABLET): Scene {
  return {
    room: "bench",
    name: `leaf-edge-${what}-${name}`,
    of: leafEdge,
    draw: () => {
      const plan = planOf(name);
      const { units, fit } = plan.kit;
      const card = leafCard(plan, choose(plan).leaf, { units, step: stepFor(units, fit.markStep) });
      return leafEdge(card, plan.pattern, units, space);
    },
  };
}

function progress(what: string, name: KitName, made: (plan: BenchPlan) => Progress): Scene {
  return {
    room: "bench",
    name: `ribbon-${what}-${name}`,
    of: ribbon,
    draw: () => {
      const plan = planOf(name);
      return ribbon(plan, made(plan)).replace("<svg ", '<svg width="320" height="13" ');
    },
  };
}

function front(what: string, name: KitName, done: (plan: BenchPlan) => number): Scene {
  return {
    room: "bench",
    name: `front-${what}-${name}`,
    of: frontNow,
    draw: () => {
      const plan = planOf(name);
      const symbol = frontSymbol(plan.pattern).replaceAll(/<\/?svg[^>]*>/g, "");
      const svg = frontNow(plan.pattern, plan, ticked(plan, done(plan)));
      return svg
        .replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" width="120" height="120" ')
        .replace(">", `><defs>${symbol}</defs>`);
    },
  };
}

/** Her ruler at a mark, with another one 8 mm on; `width` is what a phone has. */
function ruler(what: string, own: Ruler, at: number): Scene {
  return { room: "bench", name: `ruler-${what}`, of: rulerStrip, draw: () => rulerStrip(own, [at, at + 8], 0, 265) };
}

/** The first leaves are ticked, and the work is at the next. */
function ticked({ stops }: BenchPlan, count: number): Progress {
  const done = stops.slice(0, count);
  const at = stops[done.length] ?? stops.at(-1)!;
  const fresh = beginProgress({ kit: "made", fit: "", revision: "r1", at });
  return { ...fresh, ticks: done.map((leaf) => ({ leaf, took: 60_000 })) };
}

function planOf(name: KitName): BenchPlan<Pattern> {
  return valueFrom(CUT_WAY.plan(galleryKit(name).kit));
}
