import { leafNumber } from "../book/leaf-number.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { toAddress } from "../refit/address.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import type { LengthStyle, UnitSystem } from "../units/length.ts";
import { stepFor } from "../units/length.ts";
import { type BenchPlan, type BenchWay, nearestStop } from "./bench-plan.ts";
import { benchKit, fitOf, refitNow } from "./fit-key.ts";
import { placeNow } from "./moving.ts";
import { beginProgress, type Progress, showPlace } from "./progress.ts";

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

/** Opens a kit for work: goes on from kept progress, or begins with the leaves that the refit leaves out; `way` is how the refitted kit's leaves are made. Fails where the kit does not fit the book. */
export function openDesk(
  kit: Kit,
  refit: Refit,
  { units, way }: { readonly units: UnitSystem; readonly way: BenchWay },
  kept?: Progress,
): Outcome<Desk> {
  const own = refitKit(kit, refit);
  const revision = way.revision(own);
  if (isFailure(revision)) return revision;
  const fresh = {
    kit: kit.slug,
    fit: fitOf(refit),
    revision: revision.value,
    at: leafNumber(1),
    lost: own.fit.lostLeaves,
  };
  const progress = kept ?? beginProgress(fresh);
  const opened = laidOut({ kit, refit, units, changedSince: progress.revision !== revision.value }, way, progress);
  return kept || isFailure(opened) ? opened : { value: atBeginning(opened.value) };
}

function atBeginning(desk: Desk): Desk {
  return { ...desk, progress: showPlace(desk.progress, desk.plan.places[0]!) };
}

/** The desk after progress changed. The pattern follows when leaves were lost or brought back, or a batch was measured. */
export function moveDesk(desk: Desk, progress: Progress): Outcome<Desk> {
  const same = progress.lost === desk.progress.lost && progress.measured === desk.progress.measured;
  return same ? { value: atStop({ ...desk, progress }) } : laidOut(desk, desk.plan.way, progress);
}

function laidOut(desk: Omit<Desk, "plan" | "progress">, way: BenchWay, progress: Progress): Outcome<Desk> {
  const plan = way.plan(benchKit(desk.kit, refitNow(desk.kit, desk.refit, progress), desk.units));
  return isFailure(plan) ? plan : { value: atStop({ ...desk, plan: plan.value, progress }) };
}

/** At a leaf that is folded, or at work that is still to do. */
function atStop({ plan, progress, ...desk }: Desk): Desk {
  const at = nearestStop(plan, progress.at);
  return { ...desk, plan, progress: showPlace(progress, placeNow(plan, { ...progress, at })) };
}

/** The address parameters that bring this desk back: the refit with lost leaves and the bulk of the flaps. */
export function deskAddress({ kit, refit, progress }: Desk): string {
  return toAddress(refitNow(kit, refit, progress)).toString();
}

/** How marks are written here. */
export function deskStyle({ units, plan }: Desk): LengthStyle {
  return { units, step: stepFor(units, plan.kit.fit.markStep) };
}
