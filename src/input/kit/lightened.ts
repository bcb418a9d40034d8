import type { Area } from "../../core/geometry/area.ts";
import { boxOf } from "../../core/geometry/box.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import { tidy } from "../../core/units/length.ts";

/** Share of a motif's greater side that its outline may lie beside the drawn one: 0.006 mm where that is 300 mm. */
const BESIDE = 2e-5;

/** Digits of a motif's coordinates, those of its size included: four after the point where it is a hundred wide. Pages carry every point of it. */
const DIGITS = 6;

/** A motif without points that nobody would see at the size in which it is cut. */
export function lightened(area: Area): Area {
  if (area.length === 0) return area;
  return inDigits(thinOut(area, BESIDE * sideOf(area)));
}

/** A motif in as few digits as a lightened one has, after it was turned or stretched. */
export function inDigits(area: Area): Area {
  const decimals = Math.max(0, DIGITS - Math.ceil(Math.log10(sideOf(area))));
  return area.map((ring) => ring.map(([x, y]) => [tidy(x, decimals), tidy(y, decimals)] as const));
}

function sideOf(area: Area): number {
  const { left, top, right, bottom } = boxOf(area);
  return Math.max(right - left, bottom - top);
}
