import { type Fan, tip } from "../fan.ts";

/** A leaf of a published pattern: its number, and strips by level; a leaf that is not listed is unfolded. */
interface Leaf {
  leaf: number;
  spans: readonly { from: number; to: number; level: number }[];
}

export interface Book {
  fan: Fan;
  /** Depth of each level, front to back. */
  depths: readonly number[];
  leaves: readonly Leaf[];
  /** Undefined looks with parallel rays, a number from so far in front of the foremost tips. */
  eye: number | undefined;
}

/** What a ray that passes the front level at x meets at a height: a level's folded edge, the side of a leaf, or nothing. */
export function meets(book: Book, x: number, height: number): number | "side" | "nothing" {
  const { fan, depths, eye } = book;
  const target = { x, z: frontAt(book, x) };
  const far = fan.leafWidth - depths[0]! + (eye ?? 1e4);
  const origin = eye === undefined ? { x, z: far } : { x: 0, z: far };
  let nearest = Number.POSITIVE_INFINITY;
  let met: number | "side" | "nothing" = "nothing";
  for (let leaf = 1; leaf <= fan.leaves; leaf += 1) {
    const level = levelOf(book, leaf, height);
    const depth = level === 0 ? 0 : depths[level - 1]!;
    const gutter = tip(fan, leaf, fan.leafWidth);
    const edge = tip(fan, leaf, depth);
    const hit = crossing(origin, target, gutter, edge);
    // The edge shows half of the room to its neighbour on the far side, too: it is met a little beyond the paper.
    if (!hit || hit.ray >= nearest) continue;
    nearest = hit.ray;
    const slack = Math.abs(tip(fan, leaf === 1 ? 2 : leaf - 1, depth).x - edge.x) * 1.5;
    met = Math.abs(hit.x - edge.x) <= slack ? level : "side";
  }
  return met;
}

/** z of the curve through the front level's tips. */
function frontAt({ fan, depths }: Book, x: number): number {
  const tips = Array.from({ length: fan.leaves }, (_, i) => tip(fan, i + 1, depths[0]!)).sort((a, b) => a.x - b.x);
  const i = Math.max(
    1,
    Math.min(
      tips.length - 1,
      tips.findIndex((one) => one.x > x),
    ),
  );
  const [a, b] = [tips[i - 1]!, tips[i]!];
  return a.z + ((x - a.x) / (b.x - a.x)) * (b.z - a.z);
}

function levelOf({ leaves }: Book, leaf: number, height: number): number {
  const strips = leaves.find((one) => one.leaf === leaf)?.spans;
  return strips?.find((strip) => height >= strip.from && height < strip.to)?.level ?? 0;
}

interface At {
  x: number;
  z: number;
}

/** Where a ray from `o` through `t` crosses the paper from `g` to `e`, by Cramer's rule; `ray` grows away from the eye. */
function crossing(o: At, t: At, g: At, e: At): { ray: number; x: number } | undefined {
  const [rx, rz, px, pz] = [t.x - o.x, t.z - o.z, e.x - g.x, e.z - g.z];
  const determinant = rx * -pz + px * rz;
  if (Math.abs(determinant) < 1e-12) return undefined;
  const [dx, dz] = [g.x - o.x, g.z - o.z];
  const ray = (dx * -pz + px * dz) / determinant;
  const paper = (rx * dz - rz * dx) / determinant;
  return ray > 0 && paper >= 0 && paper <= 1 ? { ray, x: o.x + ray * rx } : undefined;
}
