import { between, type Random, seeded } from "../random-shapes.ts";

/** A kit of straight-sided shapes with ids a, b and c on four levels, and how its book is read. */
export interface PolygonKit {
  readonly frontMatter: Record<string, unknown> & {
    picture: { file: string; levels: Record<string, string[]>; crop: string };
    levels: Record<string, unknown>[];
    book: Record<string, unknown> & { leaves: number; direction: "ltr" | "rtl" };
    fit: Record<string, unknown> & { borderLeaves: [number, number] };
  };
  readonly width: number;
  readonly height: number;
  /** The `points` of a, b and c. */
  readonly points: readonly (readonly [number, number])[][];
}

/** The number of picture leaves is even, so that no leaf stands in the very middle, on a vertex of a mirrored shape. */
export function polygonKit(seed: number): PolygonKit {
  const random = seeded(seed);
  const pick = <T>(...values: T[]): T => values[Math.floor(random() * values.length)]!;
  const width = between(random, 90, 280);
  const height = width * between(random, 0.85, 1.2);
  const border = Math.floor(between(random, 4, 30));
  const front = between(random, 10, 20);
  const background = Math.floor(random() * 4);
  const names = ["quay", "town", "hills", "sky"];
  const shown = names.filter((_, i) => i !== background);
  return {
    width,
    height,
    points: [0.46, 0.4, 0.3].map((size) => star(random, width, height, size)),
    frontMatter: {
      title: `Polygons ${seed}`,
      summary: "Shapes for tests.",
      picture: {
        file: "picture.svg",
        levels: { [shown[0]!]: ["#a"], [shown[1]!]: ["#b"], [shown[2]!]: ["#c"] },
        crop: "canvas",
      },
      levels: names.map((name, i) => ({
        name,
        depth: front + i * between(random, 6, 9),
        ...(i === background ? { background: true } : {}),
      })),
      book: {
        leafHeight: between(random, 205, 240),
        leafWidth: between(random, 125, 150),
        blockThickness: between(random, 15, 30),
        leaves: 2 * Math.floor(between(random, 80, 120)),
        direction: pick("ltr", "rtl"),
      },
      fit: {
        borderLeaves: [border, border],
        head: between(random, 20, 50),
        height: between(random, 115, 140),
        opening: "solve",
        view: pick("front", "front", "along"),
        spine: pick("flat", "rounded"),
        markStep: pick<number | string>(0.5, 1, "1/32 in", "1/16 in"),
        leastTab: pick(3, 2, 5),
        foldStyle: "single",
      },
    },
  };
}

/** The picture of a kit: `inner` may wrap the shapes in a group with a transform. */
export function polygonSvg(kit: PolygonKit, viewBox?: readonly number[], transform?: string): string {
  const shapes = kit.points.map(
    (points, i) => `<polygon id="${"abc"[i]}" fill-rule="evenodd" points="${points.join(" ")}"/>`,
  );
  const content = transform ? `<g transform="${transform}">${shapes.join("")}</g>` : shapes.join("");
  const box = (viewBox ?? [0, 0, kit.width, kit.height]).join(" ");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}">${content}</svg>`;
}

/** Corners at random distances around a random centre, joined so that the outline often crosses itself. */
function star(random: Random, width: number, height: number, size: number): [number, number][] {
  const corners = 5 + Math.floor(random() * 6);
  const stride = random() < 0.5 ? 1 : 2;
  const [cx, cy] = [width * between(random, 0.4, 0.6, 4), height * between(random, 0.4, 0.6, 4)];
  const turn = random() * Math.PI;
  return Array.from({ length: corners }, (_, i) => {
    const angle = turn + (i * stride * 2 * Math.PI) / corners;
    const reach: number = size * between(random, 0.5, 1, 4);
    return [cx + reach * width * Math.cos(angle), cy + reach * height * Math.sin(angle)];
  });
}
