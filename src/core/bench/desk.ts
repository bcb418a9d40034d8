import type { Kit } from "../kit/kit.ts";
import { toAddress } from "../refit/address.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import type { LengthStyle, UnitSystem } from "../units/length.ts";
import { stepFor } from "../units/length.ts";
import { type BenchPlan, nearestStop, patternRevision, planBench } from "./bench-plan.ts";
import { benchKit, fitOf, refitNow } from "./fit-key.ts";
import { beginProgress, type Progress } from "./progress.ts";

/** A kit on a maker's book with how far she is: all that the bench page shows. */
export interface Desk {
  /** The kit as its author states it. */
  readonly kit: Kit;
  /** What the address asked for. */
  readonly refit: Refit;
  readonly units: UnitSystem;
  readonly plan: BenchPlan;
  readonly progress: Progress;
  /** The kit was changed since the work began: leaves folded then may not match those to come. */
  readonly changedSince: boolean;
}

/** Opens a kit for work: goes on from kept progress, or begins with the leaves that the refit leaves out. @throws Problem */
export function openDesk(kit: Kit, refit: Refit, units: UnitSystem, kept?: Progress): Desk {
  const own = refitKit(kit, refit);
  const revision = patternRevision(own);
  const fresh = (): Progress =>
    beginProgress({ kit: kit.slug, fit: fitOf(refit), revision, at: 1, lost: own.fit.lostLeaves });
  const progress = kept ?? fresh();
  const plan = planFor(kit, refit, units, progress);
  return {
    kit,
    refit,
    units,
    plan,
    progress: { ...progress, at: nearestStop(plan, progress.at) },
    changedSince: progress.revision !== revision,
  };
}

/** The desk after progress changed. The pattern follows when leaves were lost or brought back, or a batch was measured. */
export function moveDesk(desk: Desk, progress: Progress): Desk {
  const same = progress.lost === desk.progress.lost && progress.measured === desk.progress.measured;
  const plan = same ? desk.plan : planFor(desk.kit, desk.refit, desk.units, progress);
  return { ...desk, plan, progress: { ...progress, at: nearestStop(plan, progress.at) } };
}

/** The address parameters that bring this desk back: the refit with lost leaves and the bulk of the flaps. */
export function deskAddress({ kit, refit, progress }: Desk): string {
  return toAddress(refitNow(kit, refit, progress)).toString();
}

/** How marks are written here. */
export function deskStyle({ units, plan }: Desk): LengthStyle {
  return { units, step: stepFor(units, plan.kit.fit.markStep) };
}

function planFor(kit: Kit, refit: Refit, units: UnitSystem, progress: Progress): BenchPlan {
  return planBench(benchKit(kit, refitNow(kit, refit, progress), units));
}
