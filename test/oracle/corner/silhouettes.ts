/** Pictures of 100 by 100 whose strips along an upright line are known by formulas: outlines for the program, strips for the check. */
export interface Silhouette {
  readonly name: string;
  readonly rings: [number, number][][];
  readonly rule: "nonzero" | "evenodd";
  /** The strips at x, from the top, as pairs. */
  readonly strips: (x: number) => [number, number][];
}

const CORNERS = 1440;

function disc(cx: number, cy: number, r: number): [number, number][] {
  return Array.from({ length: CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

function discStrip(x: number, cx: number, cy: number, r: number): [number, number][] {
  const half = Math.sqrt(Math.max(0, r * r - (x - cx) ** 2));
  return half > 0 ? [[cy - half, cy + half]] : [];
}

function box(left: number, top: number, right: number, bottom: number): [number, number][] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

function boxStrip(x: number, [left, right]: readonly [number, number], strip: [number, number]): [number, number][] {
  return x >= left && x < right ? [strip] : [];
}

export const SILHOUETTES: readonly Silhouette[] = [
  { name: "a disc", rings: [disc(50, 50, 40)], rule: "nonzero", strips: (x) => discStrip(x, 50, 50, 40) },
  {
    name: "a ring",
    rings: [disc(50, 50, 45), disc(50, 50, 25)],
    rule: "evenodd",
    strips: (x) => {
      const [outer, inner] = [discStrip(x, 50, 50, 45)[0], discStrip(x, 50, 50, 25)[0]];
      if (!outer) return [];
      return inner
        ? [
            [outer[0], inner[0]],
            [inner[1], outer[1]],
          ]
        : [outer];
    },
  },
  {
    name: "three bars",
    rings: [box(5, 10, 95, 25), box(5, 40, 95, 55), box(15, 70, 85, 90)],
    rule: "nonzero",
    strips: (x) => [
      ...boxStrip(x, [5, 95], [10, 25]),
      ...boxStrip(x, [5, 95], [40, 55]),
      ...boxStrip(x, [15, 85], [70, 90]),
    ],
  },
  {
    name: "a steep triangle beside a small disc",
    rings: [
      [
        [5, 95],
        [35, 5],
        [65, 95],
      ],
      disc(80, 30, 12),
    ],
    rule: "nonzero",
    strips: (x) => [
      ...(x > 5 && x < 65 ? ([[5 + 3 * Math.abs(x - 35), 95]] as [number, number][]) : []),
      ...discStrip(x, 80, 30, 12),
    ],
  },
  {
    name: "a ladder of five rungs",
    rings: [10, 28, 46, 64, 82].map((top) => box(10, top, 90, top + 9)),
    rule: "nonzero",
    strips: (x) => [10, 28, 46, 64, 82].flatMap((top) => boxStrip(x, [10, 90], [top, top + 9])),
  },
];
