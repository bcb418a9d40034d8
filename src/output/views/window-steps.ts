import { boxOf } from "../../core/geometry/box.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { MotifPart } from "../../core/window/motif.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { formatByHand, formatOnRuler } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { materialName } from "../../words/parts.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { motifsInPlace } from "../drawing/diagrams/motifs-in-place.ts";
import { pocketElevation } from "../drawing/diagrams/pocket-elevation.ts";
import { windowLayers } from "../drawing/diagrams/window-layers.ts";
import type { Told } from "./step.ts";

/** What the steps of the window and the light say; undefined for a step of the book. */
export function windowText(id: StepId, kit: Kit, pattern: Pattern): string | undefined {
  if (id === "light") return lightText(kit);
  return pattern.window && closingText(id, pattern.window, kit.units);
}

function closingText(id: StepId, window: BookWindow, units: UnitSystem): string | undefined {
  switch (id) {
    case "cut":
      return cutText(window);
    case "frame":
      return frameText(window, units);
    case "glaze":
      return say.stepGlazeText(window.wish);
    case "decorate":
      return decorateText(window, units);
    case "hang":
      return say.stepHangText(window.wish);
    case "close":
      return closeText(window, units);
    default:
      return undefined;
  }
}

/** What they show. */
export function windowFigure(id: StepId, kit: Kit, pattern: Pattern): Told["figure"] {
  switch (id) {
    case "cut":
      return windowLayers(pattern.window!);
    case "frame":
      return holderInPlace(kit, pattern);
    case "decorate":
      return motifsInPlace(kit, pattern);
    case "hang":
      return doorHinge(kit, pattern);
    case "close":
      return closing(kit, pattern);
    case "light":
      return pocketElevation(pattern, pattern.pocket!, kit.units);
    default:
      return undefined;
  }
}

function cutText(window: BookWindow): string {
  return say.stepCutText({ count: partsOf(window).filter((part) => part.material === "card").length });
}

function frameText({ wish }: BookWindow, units: UnitSystem): string {
  return say.stepFrameText({ lip: formatOnRuler(wish.lip, units) });
}

function decorateText({ motifs, frame }: BookWindow, units: UnitSystem): string {
  const { left, top } = boxOf(frame.outlines);
  const set = ({ motif, material, card, spacers, seat }: MotifPart, i: number): string =>
    say.stepDecorateMotif({
      number: i + 1,
      motif: motif ?? "",
      card: materialName({ material, ...(card ? { card } : {}) }),
      spacers,
      left: formatByHand(seat[0] - left, units),
      top: formatByHand(seat[1] - top, units),
    });
  return [say.stepDecorateGuide(), say.stepDecorateMeasure(), ...motifs.map(set), say.stepDecorateDry()].join(" ");
}

function closeText({ stringLength }: BookWindow, units: UnitSystem): string {
  return say.stepCloseText({ string: formatByHand(stringLength, units) });
}

function lightText({ light, units }: Kit): string {
  return say.stepLightText({ setback: formatOnRuler(light!.setback, units) });
}
