import { classKit, suppliesLeft, workLeft } from "../../../core/class/class-kit.ts";
import type { FittingSeat } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { lazily, once } from "../../../core/lazily.ts";
import type { CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import { isCut, type PatternedKit, patternedAs } from "../../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../../core/plan/caution.ts";
import type { Counts } from "../../../core/plan/effort.ts";
import { workOf } from "../../../core/steps/work.ts";
import { suppliesOf } from "../../../core/supplies/supplies.ts";
import * as say from "../../../words/messages.ts";
import type { AnyPrintedKit } from "../any-kit-view.ts";
import { cautionsFor } from "../cautions.ts";
import { withCornerPacket } from "../corner-packet.ts";
import { type CornerView, viewCorner } from "../corner-view.ts";
import { figuresOf, type KitFigures } from "../figures.ts";
import { type KitView, viewKit } from "../kit-view.ts";
import { type PrintedKit, withPacket } from "../packet-view.ts";
import { drawStep } from "../step-drawing.ts";
import { stepsOf } from "../steps.ts";
import { supplyView } from "../supply-view.ts";

/** A seat's kit as its packet tells it: what is ready is no step, and needs no supplies and no pages to cut out. */
export function seatKitView(fit: FittingSeat, plan: KitClass, all: readonly Caution[]): AnyPrintedKit {
  const { pattern, findings, counts, seat } = fit;
  const made = patternedAs(classKit(fit.kit, plan, seat.pace), pattern, findings);
  return isCut(made) ? cutSeat(made, counts, plan.ready, all) : foldedSeat(made, all);
}

/** Where corners are folded, nothing can be made ready before. */
function foldedSeat(made: PatternedKit<CornerPattern>, all: readonly Caution[]): AnyPrintedKit {
  const view = viewCorner(made, all);
  const { kit, pattern, counts, effort, work } = view;
  return withCornerPacket(
    lazily<Pick<CornerView, "figures">, CornerView>(
      { figures: () => atPace(figuresOf(kit, pattern, { counts, effort, work })) },
      view,
    ),
  );
}

function cutSeat(made: PatternedKit, counts: Counts, ready: KitClass["ready"], all: readonly Caution[]): PrintedKit {
  const { kit, pattern } = made;
  const view = viewKit(made, all);
  const whole = once(() => workOf(kit, pattern, counts));
  const work = once(() => workLeft(whole(), ready));
  const left = lazily<Pick<KitView, "figures" | "steps" | "supplies" | "cautions">, KitView>(
    {
      figures: () => atPace(figuresOf(kit, pattern, { counts: view.counts, effort: view.effort, work: work() })),
      steps: () => stepsOf(kit, pattern, work(), { counts: view.counts, effort: view.effort }, drawStep),
      supplies: () =>
        suppliesLeft(suppliesOf(kit, pattern, counts), whole(), ready).map((one) => supplyView(one, kit.units)),
      cautions: () => cautionsFor(all, work()),
    },
    view,
  );
  return withPacket(left, (packet) => ({
    ...packet,
    gauges: ready.includes("scores") ? [] : packet.gauges,
    templates: ready.includes("parts") ? [] : packet.templates,
  }));
}

/** The time in a class is at its pace; a first piece's is no longer apart. */
function atPace(figures: KitFigures): KitFigures {
  const time = figures.key.at(-1)!;
  return { ...figures, key: [...figures.key.slice(0, -1), { ...time, note: say.packetTimeInClass() }] };
}
