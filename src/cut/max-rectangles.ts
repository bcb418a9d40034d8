/** A rectangle: its corner nearest 0, 0 and its size. */
interface Field {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a piece was put and the room it takes there; `turned` by a quarter, its width and height are swapped. */
export interface Spot extends Field {
  readonly turned: boolean;
}

/**
 * One sheet filled piece by piece: free space is kept as all greatest rectangles, and a piece goes where the shorter of
 * the two gaps beside it is least, turned where that is better. Pieces stand `apart` from each other, not from the edge.
 * Source: Jylänki (2010), "A Thousand Ways to Pack the Bin", maximal rectangles with best short side fit.
 */
export class MaxRectangles {
  readonly #apart: number;
  #free: Field[];

  constructor(width: number, height: number, apart: number) {
    this.#apart = apart;
    this.#free = [{ x: 0, y: 0, width: width + apart, height: height + apart }];
  }

  /** Takes the room for a piece; undefined where it finds none. */
  place(width: number, height: number): Spot | undefined {
    const spot = bestSpot(this.#free, width + this.#apart, height + this.#apart);
    if (!spot) return undefined;
    const left = this.#free.filter((free) => !meets(free, spot));
    const split = this.#free.filter((free) => meets(free, spot)).flatMap((free) => around(free, spot));
    this.#free = greatest([...left, ...split]);
    return { ...spot, width: spot.turned ? height : width, height: spot.turned ? width : height };
  }
}

function bestSpot(fields: readonly Field[], width: number, height: number): Spot | undefined {
  let best: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const { x, y, width: w, height: h } of fields) {
    for (const turned of [false, true]) {
      const [across, down] = turned ? [height, width] : [width, height];
      const gap = Math.min(w - across, h - down);
      if (gap < 0 || gap >= least) continue;
      best = { x, y, width: across, height: down, turned };
      least = gap;
    }
  }
  return best;
}

function meets(a: Field, b: Field): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** The greatest rectangles of a free field that a spot leaves: above, below, left and right of it. */
function around(free: Field, spot: Field): Field[] {
  const right = free.x + free.width;
  const bottom = free.y + free.height;
  return [
    { ...free, height: spot.y - free.y },
    { ...free, y: spot.y + spot.height, height: bottom - (spot.y + spot.height) },
    { ...free, width: spot.x - free.x },
    { ...free, x: spot.x + spot.width, width: right - (spot.x + spot.width) },
  ].filter((field) => field.width > 0 && field.height > 0);
}

/** Fields that lie in no other one; of equal ones the last stays. */
function greatest(fields: readonly Field[]): Field[] {
  return fields.filter(
    (field, i) => !fields.some((other, j) => i !== j && holds(other, field) && (j > i || !holds(field, other))),
  );
}

function holds(outer: Field, inner: Field): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}
