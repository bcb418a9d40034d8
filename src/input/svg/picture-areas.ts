import { type Area, areaOfRings, intersect, subtract, unite } from "../../core/geometry/area.ts";
import { clipRing, staysWithin } from "../../core/geometry/clip-ring.ts";
import { overlaps } from "../../core/geometry/overlaps.ts";
import type { FillRule, Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { hasArea } from "./path-outline.ts";
import { MOST_CUTS } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";

/** The longer side of a picture as the polygon library gets it, which keeps five decimals. */
const SIDE = 100;

/** How far around the picture areas are kept, in its longer side: its numbers stay exact there. */
const AROUND = 2;

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

  constructor({ width, height }: { readonly width: number; readonly height: number }) {
    const side = Math.max(width, height);
    this.#scale = SIDE / side;
    const [left, top, right, bottom] = [-AROUND * side, -AROUND * side, width + AROUND * side, height + AROUND * side];
    this.#room = [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ];
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
      return cutByConvex(
        outlines,
        only.map(([x, y]) => [x * back, y * back] as const),
        1e-6 * SIDE * back,
      );
    }
    const kept = this.intersect(this.areaOf(outlines, line), area, line);
    return { rings: kept.map((ring) => ring.map(([x, y]) => [x * back, y * back] as const)), rule: "nonzero" };
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

function isConvex(ring: Ring): boolean {
  let sign = 0;
  return ring.every((b, i) => {
    const [a, c] = [ring.at(i - 1)!, ring[(i + 1) % ring.length]!];
    const turn = Math.sign((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]));
    sign ||= turn;
    return turn === 0 || turn === sign;
  });
}
