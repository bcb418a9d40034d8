import { heightOf } from "../fit/shape.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { rulerStep } from "../units/ruler.ts";
import { shallower } from "./depth-offers.ts";
import { atHeight } from "./height-offer.ts";
import { type Making, makeCut } from "./making.ts";
import { leastMargins } from "./margins.ts";
import type { Change, Offer } from "./offer.ts";
import { ranked, withMore } from "./offers.ts";
import type { Reason } from "./quality.ts";
import { type Refit, refitKit } from "./refit.ts";
import { Trials } from "./trials.ts";
import { wholeOffers } from "./window-offers.ts";

/** Ways out of each reason, each a list of changes, the mildest first. */
const WAYS: Partial<Record<Reason["kind"], readonly ((kit: Kit, trials: Trials) => Change[])[]>> = {
  coarse: [fewerBorders, lower],
  "out-of-shape": [lower, higher],
  "springs-open": [widerBorders, shallowerLevels, higher],
  "light-wider-than-hole": [narrowerLight, higher],
};

/** A kit that comes out poorly can be made: so less is tried than where it does not fit. */
const SHARE = 1 / 2;

/** Where a kit comes out poorly in a reader's book: at most three ways with which it does not, the best first. */
export function betterOffers(kit: Kit, refit: Refit, reasons: readonly Reason[], making: Making = makeCut): Offer[] {
  const fitted = refitKit(kit, refit);
  const trials = new Trials(leastMargins(kit), making, SHARE);
  const ways = new Set(reasons.flatMap(({ kind }) => WAYS[kind] ?? []));
  return ranked([...ways].flatMap((way) => firstBetter(trials, kit, refit, way(fitted, trials))));
}

function firstBetter(trials: Trials, kit: Kit, refit: Refit, changes: readonly Change[]): Offer[] {
  for (const change of changes) {
    if (!trials.laysOut(refitKit(kit, { ...refit, ...change.change }))) continue;
    const [offer] = wholeOffers(trials, kit, refit, change, false);
    if (offer && offer.quality !== "poor") return [offer];
  }
  return [];
}

/** So many steps of 5 % are tried, each way. */
const STEPS = Array.from({ length: 10 }, (_, i) => (i + 1) / 20);

function lower(kit: Kit, trials: Trials): Change[] {
  return heights(kit, trials, -1);
}

function higher(kit: Kit, trials: Trials): Change[] {
  return heights(kit, trials, 1);
}

function heights(kit: Kit, { least }: Trials, way: 1 | -1): Change[] {
  const stated = heightOf(kit.fit.shape);
  if (stated === undefined) return [];
  const step = rulerStep(kit.units, "coarse");
  return STEPS.map((share) => {
    const height = Math.round((stated * (1 + way * share)) / step) * step;
    return { says: [{ kind: "height", height }], change: atHeight(kit, height, least) };
  });
}

function widerBorders(kit: Kit): Change[] {
  return STEPS.map((share) => borders(kit, Math.ceil((kit.book.leaves * share) / 2)));
}

function fewerBorders(kit: Kit): Change[] {
  const [before, after] = kit.fit.borderLeaves;
  return Array.from({ length: Math.max(before, after) }, (_, i) => borders(kit, -i - 1));
}

function borders({ fit }: Kit, more: number): Change {
  const [before, after] = withMore(fit.borderLeaves, more);
  return { says: [{ kind: "borders", before, after }], change: { borderLeaves: [before, after] } };
}

function shallowerLevels(kit: Kit): Change[] {
  return shallower(kit, 5).map((depths) => ({ says: [{ kind: "depths", depths }], change: { depths } }));
}

function narrowerLight({ light, units }: Kit): Change[] {
  if (!light) return [];
  const step = rulerStep(units, "plain");
  return STEPS.map((share) => Math.floor((light.diameter * (1 - share)) / step) * step)
    .filter((diameter) => diameter >= BOUNDS.lightDiameter.least)
    .map((diameter) => ({ says: [{ kind: "light-width", diameter }], change: { lightDiameter: diameter } }));
}
