import type { Point } from "../core/geometry/plane.ts";
import type { Label, Seen } from "./seen.ts";
import { type Bounds, boundsOf, type Shape } from "./seen-shape.ts";

/** Letters lower than this are not read on paper at a bench, mm: 7 pt (common practice, no source). */
const LEAST_LETTERS = (7 / 72) * 25.4;

/** How far beyond the drawing things may lie, in its units: what rounding leaves. */
const OUTSIDE = 0.06;

/** What is wrong with a drawing, in words. */
export function faultsOf(drawing: Seen): string[] {
  return [...outside(drawing), ...tooSmall(drawing), ...uponEachOther(drawing), ...crossed(drawing), ...twice(drawing)];
}

function outside({ box, labels, shapes }: Seen): string[] {
  const isOut = ([left, top, right, bottom]: Bounds): boolean =>
    left < box[0] - OUTSIDE || top < box[1] - OUTSIDE || right > box[2] + OUTSIDE || bottom > box[3] + OUTSIDE;
  return [
    ...labels.filter(({ corners }) => isOut(boundsOf(corners))).map(({ words }) => `outside: ${words}`),
    ...shapes.filter(({ bounds }) => isOut(bounds)).map(({ name }) => `outside: a ${name}`),
  ];
}

function tooSmall({ scale, labels }: Seen): string[] {
  return labels
    .filter(({ size }) => size * scale < LEAST_LETTERS)
    .map(({ words, size }) => `small (${(size * scale).toFixed(1)} mm): ${words}`);
}

function uponEachOther({ labels }: Seen): string[] {
  const inks = labels.map(within);
  return labels.flatMap((a, i) =>
    labels
      .slice(i + 1)
      .filter((_, n) => meet(inks[i]!, inks[i + 1 + n]!))
      .map((b) => `upon each other: ${a.words} | ${b.words}`),
  );
}

/** Words with a line through them that nothing covers. */
function crossed({ labels, shapes }: Seen): string[] {
  const stroked = shapes.filter((shape) => shape.stroked);
  return labels
    .filter((label) => {
      const ink = within(label);
      const bounds = boundsOf(ink);
      const middle = middleOf(ink);
      return stroked
        .filter((shape) => overlap(shape.bounds, bounds) && runsThrough(shape, ink, bounds))
        .some((shape) => !shapes.some((over) => covers(over, shape, label, middle)));
    })
    .map(({ words }) => `crossed: ${words}`);
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3];
}

function covers(over: Shape, under: Shape, label: Label, middle: Point): boolean {
  return (
    over.filled &&
    over.place > under.place &&
    over.place < label.place &&
    over.lines.some((line) => isInside(middle, line))
  );
}

function twice({ ids }: Seen): string[] {
  return [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))].map((id) => `twice: id ${id}`);
}

/** The corners of a label, drawn in a little: letters are not as wide as they are reckoned. */
function within({ corners }: Label): Point[] {
  const [mx, my] = middleOf(corners);
  return corners.map(([x, y]) => [mx + (x - mx) * 0.86, my + (y - my) * 0.86]);
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce(([sx, sy], [x, y]) => [sx + x, sy + y] as const, [0, 0] as const);
  return [sum[0] / points.length, sum[1] / points.length];
}

function runsThrough({ lines }: Shape, ink: readonly Point[], bounds: Bounds): boolean {
  return lines.some((line) =>
    line.slice(1).some((to, i) => overlap(boundsOf([line[i]!, to]), bounds) && meet([line[i]!, to], ink)),
  );
}

/** Whether two convex figures meet: no side of either parts them. */
function meet(a: readonly Point[], b: readonly Point[]): boolean {
  return ![...normals(a), ...normals(b)].some(([nx, ny]) => {
    const along = (points: readonly Point[]): number[] => points.map(([x, y]) => x * nx + y * ny);
    const [one, other] = [along(a), along(b)];
    return Math.max(...one) < Math.min(...other) || Math.max(...other) < Math.min(...one);
  });
}

function normals(points: readonly Point[]): Point[] {
  return points.map(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    return [y - nextY, nextX - x];
  });
}

/** Whether a point lies in a closed line, by the crossings at its right. */
function isInside([x, y]: Point, line: readonly Point[]): boolean {
  const crossings = line.filter(([ax, ay], i) => {
    const [bx, by] = line[(i + 1) % line.length]!;
    return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
  });
  return crossings.length % 2 === 1;
}
