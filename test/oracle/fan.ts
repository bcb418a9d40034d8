/** An opened book, in millimetres and radians. Leaves are counted from 1, in book order. */
export interface Fan {
  leafWidth: number;
  blockThickness: number;
  leaves: number;
  opening: number;
  spine: "flat" | "rounded";
  direction: "ltr" | "rtl";
}

/** Where the folded edge of a leaf stands: x to the viewer's right, z to the viewer. */
export function tip(fan: Fan, leaf: number, depth: number): { x: number; z: number } {
  const fraction = (leaf - 0.5) / fan.leaves - 0.5;
  const angle = fan.opening * fraction;
  const radius = fan.leafWidth - depth;
  const arc = fan.blockThickness / fan.opening;
  const rootX = fan.spine === "flat" ? fan.blockThickness * fraction : arc * Math.sin(angle);
  const rootZ = fan.spine === "flat" ? 0 : arc * (Math.cos(angle) - 1);
  const x = rootX + radius * Math.sin(angle);
  return { x: fan.direction === "rtl" ? -x : x, z: rootZ + radius * Math.cos(angle) };
}

/** Where each leaf from `first` to `last` reads the picture, in book order, growing to the viewer's right. */
export function readingPositions(
  fan: Fan,
  first: number,
  last: number,
  depth: number,
  view: "front" | "along",
): number[] {
  const tips = Array.from({ length: last - first + 1 }, (_, i) => tip(fan, first + i, depth));
  if (view === "front") return tips.map((t) => t.x);
  const sign = fan.direction === "rtl" ? -1 : 1;
  let length = 0;
  return tips.map((t, i) => {
    const before = tips[i - 1];
    if (before) length += Math.hypot(t.x - before.x, t.z - before.z);
    return sign * length;
  });
}

/** Edges of the cells from left to right: midway between neighbours, half a pitch beyond the outermost. */
export function cellEdges(positions: number[]): number[] {
  const p = [...positions].sort((a, b) => a - b);
  const n = p.length;
  if (n < 2) throw new Error("a picture needs two leaves or more");
  const between = p.slice(1).map((v, i) => (v + p[i]!) / 2);
  return [p[0]! - (p[1]! - p[0]!) / 2, ...between, p[n - 1]! + (p[n - 1]! - p[n - 2]!) / 2];
}

export function displayedWidth(fan: Fan, first: number, last: number, depth: number, view: "front" | "along"): number {
  const edges = cellEdges(readingPositions(fan, first, last, depth, view));
  return edges[edges.length - 1]! - edges[0]!;
}
