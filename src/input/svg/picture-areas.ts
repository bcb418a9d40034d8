import { type Area, areaOfRings, intersect, rectangle, subtract, unite } from "../../core/geometry/area.ts";
import { boxOf } from "../../core/geometry/box.ts";
import { clipRing, staysWithin } from "../../core/geometry/clip-ring.ts";
import { overlaps } from "../../core/geometry/overlaps.ts";
import type { FillRule, Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { hasArea } from "./path-outline.ts";
import { MOST_CUTS, MOST_LOOKS } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";

/** The longer side of a picture as the polygon library gets it, which keeps five decimals. */
const SIDE = 100;

/** How far around the picture areas are kept, in its longer side: its numbers stay exact there. */
const AROUND = 2;

/** Convex outlines of more corners are cut by as any others, as each of them takes a round through all points. */
const FEW_CORNERS = 8;

/** Outlines under a fill rule. */
export interface Outlines {
  readonly rule: FillRule;
  readonly rings: readonly Ring[];
}

/** Areas of one picture, cut by each other. Outlines are in picture units, an {@link Area} is in the library's. */
export class PictureAreas {
  readonly #scale: number;
  readonly #room: Ring;
  #compared = 0;
  #looked = 0;

  constructor({ width, height }: { readonly width: number; readonly height: number }) {
    const side = Math.max(width, height);
    this.#scale = SIDE / side;
    const around = AROUND * side;
    this.#room = rectangle(-around, -around, width + around, height + around);
  }

  /** @throws PictureLimit as all that follow: where there is more to compare than drawings have */
  areaOf({ rings, rule }: Outlines, line: number): Area {
    const scale = this.#scale;
    const near = rings.map((ring) => (staysWithin(ring, this.#room, 0) ? ring : clipRing(ring, this.#room)));
    const scaled = near
      .filter((ring) => ring.length >= 3 && ring.every((point) => point.every(Number.isFinite)))
      .map((ring) => ring.map(([x, y]) => [x * scale, y * scale] as const));
    this.#count(scaled, line);
    return areaOfRings(scaled, rule);
  }

  unite(a: Area, b: Area, line: number): Area {
    this.#count([...a, ...b], line);
    return unite(a, b);
  }

  subtract(a: Area, b: Area, line: number): Area {
    this.#count([...a, ...b], line);
    return subtract(a, b);
  }

  intersect(a: Area, b: Area, line: number): Area {
    this.#count([...a, ...b], line);
    return intersect(a, b);
  }

  /** The part of outlines inside an area; themselves where they do not leave it. */
  cut(outlines: Outlines, area: Area, line: number): Outlines {
    const [only] = area;
    if (only === undefined) return { rings: [], rule: "nonzero" };
    const back = 1 / this.#scale;
    if (area.length === 1 && isConvex(only)) {
      const corners = only.map(([x, y]) => [x * back, y * back] as const);
      const tolerance = 1e-6 * SIDE * back;
      if (staysWithin(frameRound(outlines.rings), corners, tolerance)) return outlines;
      if (corners.length <= FEW_CORNERS) return cutByConvex(outlines, corners, tolerance);
    }
    const near = this.#near(area, outlines, line);
    if (near.length === 0) return { rings: [], rule: "nonzero" };
    const kept = this.intersect(this.areaOf(outlines, line), near, line);
    return { rings: kept.map((ring) => ring.map(([x, y]) => [x * back, y * back] as const)), rule: "nonzero" };
  }

  /** The part of an area that outlines may have to do with, so that each of many small shapes meets little of it. */
  #near(area: Area, { rings }: Outlines, line: number): Area {
    this.#looked += area.reduce((sum, ring) => sum + ring.length, 0);
    if (this.#looked > MOST_LOOKS) throw new PictureLimit(line, say.pictureManyCuts());
    const { left, top, right, bottom } = boxOf(rings);
    const margin = 1e-6 * SIDE;
    const [l, t, r, b] = [left, top, right, bottom].map((side) => side * this.#scale) as [
      number,
      number,
      number,
      number,
    ];
    const frame = rectangle(l - margin, t - margin, r + margin, b + margin);
    return area.map((ring) => clipRing(ring, frame)).filter((ring) => ring.length >= 3);
  }

  #count(rings: readonly Ring[], line: number): void {
    this.#compared += overlaps(rings);
    if (this.#compared > MOST_CUTS) throw new PictureLimit(line, say.pictureManyCuts());
  }
}

/** The part of outlines inside a convex one; themselves when they leave it by no more than `tolerance`. */
export function cutByConvex(outlines: Outlines, corners: Ring, tolerance: number): Outlines {
  if (outlines.rings.every((ring) => staysWithin(ring, corners, tolerance))) return outlines;
  const rings = outlines.rings.map((ring) => clipRing(ring, corners));
  return { rings: rings.filter((ring) => ring.length >= 3 && hasArea([ring])), rule: outlines.rule };
}

/** The smallest upright rectangle round outlines. */
function frameRound(rings: readonly Ring[]): Ring {
  const { left, top, right, bottom } = boxOf(rings);
  return rectangle(left, top, right, bottom);
}

function isConvex(ring: Ring): boolean {
  let sign = 0;
  return ring.every((b, i) => {
    const [a, c] = [ring.at(i - 1)!, ring[(i + 1) % ring.length]!];
    const turn = Math.sign((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]));
    sign ||= turn;
    return turn === 0 || turn === sign;
  });
}
