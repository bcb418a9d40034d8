import { boxOf } from "../../core/geometry/box.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { MotifPart } from "../../core/window/motif.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { type Dual, dual, dualByHand } from "../../words/dual.ts";
import { formatByHand, formatOnRuler } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { materialName } from "../../words/parts.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { motifsInPlace } from "../drawing/diagrams/motifs-in-place.ts";
import { windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation } from "../drawing/pocket-figure.ts";
import type { Told } from "./step.ts";

/** What the steps of the window and the light say and show; undefined for a step of the book. */
export function windowTold(id: StepId, kit: Kit, pattern: Pattern): Told | undefined {
  if (id === "light") return lightTold(kit, pattern);
  return pattern.window && closingTold(id, kit, pattern, pattern.window);
}

function closingTold(id: StepId, kit: Kit, pattern: Pattern, window: BookWindow): Told | undefined {
  switch (id) {
    case "cut":
      return { text: cutText(window), figure: windowLayers(window) };
    case "frame":
      return { text: frameText(window), figure: holderInPlace(kit, pattern) };
    case "glaze":
      return { text: say.stepGlazeText(window.wish), figure: undefined };
    case "decorate":
      return decorateTold(kit, pattern, window);
    case "hang":
      return { text: say.stepHangText(window.wish), figure: doorHinge(kit, pattern) };
    case "close":
      return { text: closeText(window), figure: closing(kit, pattern) };
    default:
      return undefined;
  }
}

function cutText(window: BookWindow): string {
  return say.stepCutText({ count: partsOf(window).filter((part) => part.material === "card").length });
}

function frameText({ wish }: BookWindow): Dual {
  return dual((units) => say.stepFrameText({ lip: formatOnRuler(wish.lip, units) }));
}

function decorateTold(kit: Kit, pattern: Pattern, { motifs, frame }: BookWindow): Told {
  const { left, top } = boxOf(frame.outlines);
  const set = ({ motif, material, card, spacers, seat }: MotifPart, i: number, units: UnitSystem): string =>
    say.stepDecorateMotif({
      number: i + 1,
      motif: motif ?? "",
      card: materialName({ material, ...(card ? { card } : {}) }),
      spacers,
      left: formatByHand(seat[0] - left, units),
      top: formatByHand(seat[1] - top, units),
    });
  const text = dual((units) =>
    [
      say.stepDecorateGuide(),
      say.stepDecorateMeasure(),
      ...motifs.map((motif, i) => set(motif, i, units)),
      say.stepDecorateDry(),
    ].join(" "),
  );
  return { text, figure: motifsInPlace(kit, pattern) };
}

function closeText({ stringLength }: BookWindow): Dual {
  const string = dualByHand(stringLength);
  return dual((units) => say.stepCloseText({ string: string[units] }));
}

function lightTold(kit: Kit, pattern: Pattern): Told {
  const text = dual((units) => say.stepLightText({ setback: formatOnRuler(kit.light!.setback, units) }));
  return { text, figure: pocketElevation(pattern, pattern.pocket!, kit.units) };
}
