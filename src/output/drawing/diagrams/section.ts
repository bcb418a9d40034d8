import type { FoldStyle } from "../../../core/spans/fold-style.ts";
import { pathPoint } from "../path.ts";
import { type At, edgeOn } from "./ink.ts";

/** Stretches of one leaf seen edge-on: `from` and `to` in mm from the unfolded fore-edge, `layer` 0 the body, more behind it. */
interface Layer {
  readonly from: number;
  readonly to: number;
  readonly layer: number;
}

/**
 * A folded leaf from the head edge, from the gutter to its raw fore-edge. Folded once, its flap lies behind the body from
 * depth d to 2d. Folded in steps, the whole leaf is folded at the front depth first and the strip of both layers once more at d.
 */
export function foldedLayers(depth: number, front: number, style: FoldStyle, gutter: number): Layer[] {
  const body = { from: gutter, to: depth, layer: 0 };
  if (style === "single" || depth <= front) return [body, { from: depth, to: 2 * depth, layer: 1 }];
  const end = 2 * depth - front;
  const strip = { from: depth, to: end, layer: 3 };
  return 2 * front <= depth
    ? [body, { ...strip, layer: 2 }, { from: end, to: end - front, layer: 1 }]
    : [body, strip, { from: end, to: depth, layer: 2 }, { from: depth, to: 2 * front, layer: 1 }];
}

/** How many layers lie behind the body. */
export function layersBehind(layers: readonly Layer[]): number {
  return Math.max(...layers.map((one) => one.layer));
}

/** Layers as one line of paper with rounded folds; `place` puts (mm from the fore-edge, layer) into the drawing. */
export function paperLine(layers: readonly Layer[], place: (depth: number, layer: number) => At, next = false): string {
  const parts = layers.map((one, i) => {
    const end = place(one.to, one.layer);
    const next = layers[i + 1];
    const line = `L${pathPoint(end)}`;
    if (!next) return line;
    const to = place(next.from, next.layer);
    const away = Math.sign(end[0] - place(one.from, one.layer)[0]) * 0.66 * Math.abs(to[1] - end[1]);
    return `${line}C${pathPoint([end[0] + away, end[1]])} ${pathPoint([to[0] + away, to[1]])} ${pathPoint(to)}`;
  });
  return edgeOn(`M${pathPoint(place(layers[0]!.from, layers[0]!.layer))}${parts.join("")}`, next);
}
