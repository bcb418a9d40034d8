/**
 * The opened book as a fan of leaves. x runs to the viewer's right, z to the viewer, mm; angles in radians.
 * Leaves are counted from 0 here, in book order.
 */
export interface Fan {
  readonly leaves: number;
  readonly leafWidth: number;
  readonly blockThickness: number;
  /** Opening between the first and the last leaf, > 0. */
  readonly opening: number;
  readonly spine: "flat" | "rounded";
  readonly direction: "ltr" | "rtl";
}

export interface Place {
  readonly x: number;
  readonly z: number;
}

/** Where leaf j stands, seen from the front: 0 points at the viewer, negative to the viewer's left. */
export function leafAngle(fan: Fan, j: number): number {
  return side(fan) * fan.opening * ((j + 0.5) / fan.leaves - 0.5);
}

/** Where leaf j joins the spine: on a straight line (flat), or on a circle arc as long as the block is thick (rounded). */
export function leafRoot(fan: Fan, j: number): Place {
  if (fan.spine === "flat") return { x: side(fan) * fan.blockThickness * ((j + 0.5) / fan.leaves - 0.5), z: 0 };
  const radius = fan.blockThickness / fan.opening;
  const angle = leafAngle(fan, j);
  return { x: radius * Math.sin(angle), z: radius * (Math.cos(angle) - 1) };
}

/** The tip of leaf j where it is folded at `depth` from the fore-edge: root + (W − depth)·(sin θ, cos θ). */
export function leafTip(fan: Fan, j: number, depth: number): Place {
  const angle = leafAngle(fan, j);
  const root = leafRoot(fan, j);
  const radius = fan.leafWidth - depth;
  return { x: root.x + radius * Math.sin(angle), z: root.z + radius * Math.cos(angle) };
}

/** Straight distance between two places. */
export function distance(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.z - b.z);
}

/** Leaf 1 of a left-to-right book is at the viewer's left; right-to-left mirrors. */
function side(fan: Fan): 1 | -1 {
  return fan.direction === "ltr" ? 1 : -1;
}
