/**
 * A leaf folded by corners, worked out by mirroring points in its creases. Points are [at, depth]: mm from the head and from
 * the fore-edge. Nothing here is taken from the program.
 */
export type Point = readonly [at: number, depth: number];

export interface FoldLine {
  readonly corner: "head" | "tail";
  readonly a: Point;
  readonly b: Point;
}

export interface LeafSize {
  readonly height: number;
  readonly width: number;
}

/** The mirror image of a point in the line through two others: twice its foot on the line, less itself. */
export function mirror([px, py]: Point, { a, b }: Pick<FoldLine, "a" | "b">): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = ((px - a[0]) * dx + (py - a[1]) * dy) / (dx * dx + dy * dy);
  return [2 * (a[0] + t * dx) - px, 2 * (a[1] + t * dy) - py];
}

/** Where the corner itself comes to lie. */
export function cornerAt({ corner, a, b }: FoldLine, { height }: LeafSize): Point {
  return mirror([corner === "head" ? 0 : height, 0], { a, b });
}

/** How far along its edge a crease ends: the furthest, up to 45°, whose mirrored corner stays within a reach. Found by halving. */
export function furthestEnd(mark: number, corner: FoldLine["corner"], size: LeafSize, reach: number): number {
  const edge = corner === "head" ? 0 : size.height;
  const away = Math.abs(mark - edge);
  const landing = (end: number) => cornerAt({ corner, a: [mark, 0], b: [edge, end] }, size)[1];
  if (landing(away) <= reach) return away;
  let [low, high] = [0, away];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (landing(middle) <= reach) low = middle;
    else high = middle;
  }
  return low;
}

/** Whether a point lies on the side of a crease where its corner is: that of the point where the edges meet. */
function isBeyond(point: Point, { a, b }: FoldLine): boolean {
  const side = ([at, depth]: Point) => (b[0] - a[0]) * (depth - a[1]) - (b[1] - a[1]) * (at - a[0]);
  return side(point) * side([b[0], 0]) > 0;
}

function isOnSheet([at, depth]: Point, { height, width }: LeafSize): boolean {
  return at >= 0 && at <= height && depth >= 0 && depth <= width;
}

/** Layers of paper at a point of a leaf that is folded along creases: its body, and each flap that covers the point. */
export function layersAt(
  point: Point,
  folds: readonly FoldLine[],
  size: LeafSize,
): { readonly body: boolean; readonly flaps: number } {
  const body = isOnSheet(point, size) && folds.every((fold) => !isBeyond(point, fold));
  const flaps = folds.filter((fold) => {
    const before = mirror(point, fold);
    return isOnSheet(before, size) && isBeyond(before, fold);
  }).length;
  return { body, flaps };
}
