import { fileNames } from "../file-name.ts";
import { type Area, sizeOf } from "../geometry/area.ts";
import { type Box, boxOf } from "../geometry/box.ts";
import { simplify } from "../geometry/simplify.ts";
import type { LightWish } from "../light/light.ts";
import type { Part } from "./part.ts";

/** A silhouette to set on the window: one connected area, in units of its own. */
export interface Motif {
  readonly name: string;
  readonly area: Area;
}

/** The largest motif is this many times as wide and as high as the light, where the window has room; the others are this share of the window's width. */
const COVER = 1.35;
const SMALL = 0.24;

/** Motifs never fill more of the window than this share of its width and height. */
const MOST = 0.85;

const CHORD_ERROR = 0.008;

/**
 * Motifs sized to a window: the one that fills its own box best is the largest and covers the light (or a third of the window
 * where there is none); the others are smaller and go above it. Frames are their own.
 */
export function motifParts(motifs: readonly Motif[], window: Box, light: LightWish | undefined): Part[] {
  const names = fileNames(
    motifs.map(({ name }) => name),
    "other",
  );
  const order = motifs.toSorted((a, b) => measured(b).filled - measured(a).filled);
  return order.map((motif, i): Part => {
    const { box } = measured(motif);
    const size = { width: box.right - box.left, height: box.bottom - box.top };
    const room = Math.min(
      (MOST * (window.right - window.left)) / size.width,
      (MOST * (window.bottom - window.top)) / size.height,
    );
    const covering = light
      ? Math.max((COVER * light.diameter) / size.width, (COVER * light.height) / size.height)
      : (MOST * 0.5 * (window.right - window.left)) / size.width;
    const scale = Math.min(room, i === 0 ? covering : (SMALL * (window.right - window.left)) / size.width);
    const area = motif.area.map((ring) =>
      ring.map(([x, y]) => [(x - box.left) * scale, (y - box.top) * scale] as const),
    );
    return {
      id: `motif-${names[motifs.indexOf(motif)]!}`,
      kind: i === 0 ? "largest-motif" : "motif",
      motif: motif.name,
      material: "card",
      count: 1,
      frame: "own",
      outlines: simplify(area, CHORD_ERROR),
      scores: [],
      marks: [],
    };
  });
}

interface Measured {
  readonly box: Box;
  /** Share of its own box that a motif fills. */
  readonly filled: number;
}

const known = new WeakMap<Motif, Measured>();

/** A motif is measured once, however often it is sized to a window. */
function measured(motif: Motif): Measured {
  let found = known.get(motif);
  if (!found) {
    const box = boxOf(motif.area);
    found = { box, filled: sizeOf(motif.area) / boxSize(box) };
    known.set(motif, found);
  }
  return found;
}

function boxSize(box: Box): number {
  return (box.right - box.left) * (box.bottom - box.top);
}
