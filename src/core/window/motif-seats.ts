import type { Area } from "../geometry/area.ts";
import { type Box, boxOf } from "../geometry/box.ts";
import type { Point } from "../geometry/point.ts";

/** Width and height of a motif. */
interface Extent {
  readonly width: number;
  readonly height: number;
}

/**
 * Motifs where they are set on the window, the largest first: it stands low before the light (in the hole's middle where
 * there is none), the second high on the right, the third low on the left, where they do not touch it. Further motifs are
 * left out. `light` is its middle across and its floor, in the frame of the hole.
 */
export function seatMotifs(
  motifs: readonly Area[],
  hole: Box,
  light: { readonly middle: number; readonly floor: number } | undefined,
): Area[] {
  const { left, top, right, bottom } = hole;
  const [across, down] = [right - left, bottom - top];
  const middle = light?.middle ?? (left + right) / 2;
  const foot = Math.min(light?.floor ?? bottom, bottom - 1);
  const seats: readonly ((extent: Extent) => Point)[] = [
    ({ width, height }) => [middle - width / 2, foot - height],
    ({ width }) => [right - width - 0.05 * across, top + 0.25 * down],
    ({ height }) => [left + 0.025 * across, bottom - 0.13 * down - height],
  ];
  return motifs.slice(0, seats.length).map((motif, i) => seated(motif, seats[i]!));
}

/** Moves a motif so that the upper left corner of its box stands where its seat says. */
function seated(motif: Area, seat: (extent: Extent) => Point): Area {
  const box = boxOf(motif);
  const [x, y] = seat({ width: box.right - box.left, height: box.bottom - box.top });
  return motif.map((ring) => ring.map(([px, py]) => [x + px - box.left, y + py - box.top] as const));
}
