import type { Area } from "../../core/geometry/area.ts";
import { boxOf } from "../../core/geometry/box.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import { tidy } from "../../core/units/length.ts";

/** Share of a motif's greater side that its outline may lie beside the drawn one: 0.006 mm where that is 300 mm. */
const BESIDE = 2e-5;

/** Digits after those of a motif's size; pages carry every point of it. */
const DIGITS = 6;

/** A motif without points that nobody would see at the size in which it is cut. */
export function lightened(area: Area): Area {
  if (area.length === 0) return area;
  const box = boxOf(area);
  const side = Math.max(box.right - box.left, box.bottom - box.top);
  const decimals = Math.max(0, DIGITS - Math.ceil(Math.log10(side)));
  return thinOut(area, BESIDE * side).map((ring) =>
    ring.map(([x, y]) => [tidy(x, decimals), tidy(y, decimals)] as const),
  );
}
