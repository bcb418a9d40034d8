import { toDegrees } from "../core/units/angle.ts";
import type { UnitSystem } from "../core/units/length.ts";
import { formatSize } from "./lengths.ts";
import { listText } from "./lists.ts";
import * as say from "./messages.ts";

/** What an opening does to the picture. Angles radians, widths mm. */
export interface OpenedShape {
  readonly opening: number;
  /** Whether it is the kit's own opening. */
  readonly own: boolean;
  readonly width: number;
  /** Width over true width: 1.32 is 32% wider than true. */
  readonly stretch: number;
  /** Whether the width is measured along the front instead of straight across. */
  readonly along: boolean;
  /** The opening that the flaps force, where it is wider than this one. */
  readonly heldOpenTo: number | undefined;
  /** Where the window is cut for another opening: whether it is drawn where it does not fit, or hidden. */
  readonly window: "misfit" | "hidden" | undefined;
}

/** From where the book is seen: radians round it (positive to the right, within half a turn) and above it; `distance` is 1 where all of it shows. */
export interface Standpoint {
  readonly turn: number;
  readonly tilt: number;
  readonly distance: number;
}

/** Less than this share from true is called true. */
const TRUE_WITHIN = 0.005;

/** What an opening does to the picture: its width, how far that is from true, and what stands against it. */
export function openingWords(shape: OpenedShape, units: UnitSystem): string {
  return [
    say.roundOpening({ opening: degrees(shape.opening), whose: shape.own ? "own" : "moved" }),
    say.roundWidth({
      measured: shape.along ? "along" : "front",
      width: formatSize(shape.width, units),
      ...shapeArguments(shape.stretch),
    }),
    ...(shape.heldOpenTo === undefined ? [] : [say.roundResting({ degrees: degrees(shape.heldOpenTo) })]),
    ...(shape.window === undefined ? [] : [say.roundWindow({ shown: shape.window })]),
  ].join(" ");
}

function shapeArguments(stretch: number): { readonly shape: string; readonly share: number } {
  const percent = Math.abs(stretch - 1) * 100;
  const share = Number(percent < 10 ? percent.toFixed(1) : percent.toFixed(0));
  if (Math.abs(stretch - 1) < TRUE_WITHIN) return { shape: "true", share };
  return { shape: stretch > 1 ? "wider" : "narrower", share };
}

/** What stands on the turntable. */
export interface OnTurntable {
  readonly corners: boolean;
  readonly light: boolean;
  readonly window: boolean;
}

/** What the view shows of this pattern. */
export function turntableWords({ corners, light, window }: OnTurntable): string {
  const parts = [
    corners ? say.kitRoundCorners() : say.kitRoundLeaves(),
    ...(light ? [say.kitRoundLight()] : []),
    ...(window ? [say.kitRoundWindow()] : []),
  ];
  return say.kitRoundText({ parts: listText(parts) });
}

/** From where the book is seen: `Seen from 30° to the right, 10° below, at 200%.` */
export function standpointWords({ turn, tilt, distance }: Standpoint): string {
  const [aside, above] = [degrees(turn), degrees(tilt)];
  const near = Math.round(100 / distance);
  return say.roundSeen({
    around: aroundOf(aside),
    turn: Math.abs(aside),
    height: above === 0 ? "level" : above > 0 ? "above" : "below",
    tilt: Math.abs(above),
    zoom: near === 100 ? "whole" : "zoomed",
    near,
  });
}

function aroundOf(aside: number): "front" | "behind" | "left" | "right" {
  if (aside === 0) return "front";
  if (Math.abs(aside) === 180) return "behind";
  return aside > 0 ? "right" : "left";
}

function degrees(radians: number): number {
  return Math.round(toDegrees(radians)) + 0;
}
