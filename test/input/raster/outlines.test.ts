import { describe, expect, it } from "vitest";
import type { Point, Ring } from "../../../src/core/geometry/point.ts";
import { DPI_300, drawing, drawn, outlined, overlap, traced } from "./pictures.ts";

/** Millimetres a pixel at 300 dots an inch. */
const MM = 25.4 / 300;
const STAR: readonly Point[] = [
  [50, 5],
  [61, 39],
  [97, 39],
  [68, 60],
  [79, 95],
  [50, 74],
  [21, 95],
  [32, 60],
  [3, 39],
  [39, 39],
];
const star = `<polygon points="${STAR.join(" ")}"/>`;

const SHAPES: Readonly<Record<string, string>> = {
  "a disc": '<circle cx="50" cy="50" r="40"/>',
  "a small disc": '<circle cx="50" cy="50" r="3"/>',
  "a ring":
    '<path fill-rule="evenodd" d="M50 10a40 40 0 100 80 40 40 0 000-80zM50 30a20 20 0 110 40 20 20 0 010-40z"/>',
  "a star": star,
  "a square that is turned": '<rect x="20" y="20" width="60" height="60" transform="rotate(17 50 50)"/>',
  "bars of 1 and 2 mm":
    '<rect x="10" y="10" width="1" height="80"/><rect x="30" y="10" width="2" height="80"/><rect x="60" y="10" width="2" height="80" transform="rotate(30 60 50)"/>',
  "a letter with a hole": '<path d="M20 90L45 10h10L80 90H70L63 66H37L30 90zM40 57h20L50 22z"/>',
  "a letter of curves":
    '<path fill="none" stroke="#000" stroke-width="8" d="M75 25C60 5 25 10 28 32S80 55 75 75 30 95 22 72"/>',
  "what reaches the edge": '<path d="M0 40Q50 10 100 60V100H0z"/>',
};

/** How far a point is from the nearest corner of outlines. */
const away = (rings: readonly Ring[], [x, y]: Point): number =>
  Math.min(...rings.flat().map((point) => Math.hypot(point[0] - x, point[1] - y)));

describe("drawRaster(file, plan) of a silhouette at 300 dpi", () => {
  it.each(Object.entries(SHAPES))("covers what librsvg draws: %s", async (_, body) => {
    const theirs = drawn(drawing(body), DPI_300);
    const picture = traced(await theirs.clone().png().toBuffer());
    expect([picture.width, picture.height, picture.shapes.length]).toEqual([DPI_300, DPI_300, 1]);
    const ours = drawn(outlined(picture, picture.shapes[0]!.rings), DPI_300);
    expect(await overlap(theirs, ours)).toBeGreaterThan(0.98);
  });

  it("keeps corners within the tolerance, and adds none to straight sides", async () => {
    const { shapes } = traced(await drawn(drawing(star), DPI_300).png().toBuffer());
    for (const [x, y] of STAR)
      expect(MM * away(shapes[0]!.rings, [(x / 100) * DPI_300, (y / 100) * DPI_300])).toBeLessThan(0.2);
    const square = drawing('<rect x="20" y="20" width="60" height="60"/>');
    expect(traced(await drawn(square, DPI_300).png().toBuffer()).shapes[0]!.rings.map((ring) => ring.length)).toEqual([
      4,
    ]);
  });

  it("is the same from every format, and twice the same", async () => {
    const picture = drawn(drawing(star), DPI_300);
    const files = await Promise.all([
      picture.clone().png().toBuffer(),
      picture.clone().jpeg({ quality: 85 }).toBuffer(),
      picture.clone().webp({ quality: 85 }).toBuffer(),
      picture.clone().avif({ quality: 70, effort: 0 }).toBuffer(),
    ]);
    const [png, ...others] = files.map((file) => traced(file));
    const outline = (one: typeof png) => drawn(outlined(one!, one!.shapes[0]!.rings), 600);
    for (const other of others) expect(await overlap(outline(png), outline(other))).toBeGreaterThan(0.995);
    expect(JSON.stringify(traced(files[1]!))).toBe(JSON.stringify(others[0]));
  });

  it("is in pixels of the saved picture where that is reduced", async () => {
    const { width, height, shapes, notes } = traced(
      await drawn(drawing('<rect x="25" y="25" width="50" height="50"/>'), 4000).png().toBuffer(),
    );
    expect([width, height]).toEqual([4000, 4000]);
    for (const corner of [
      [1000, 1000],
      [3000, 1000],
      [3000, 3000],
      [1000, 3000],
    ] as const)
      expect(away(shapes[0]!.rings, corner)).toBeLessThan(3);
    expect(notes.map(({ message }) => message)).toContain(
      "taken at 2400 × 2400 pixels of 4000 × 4000, which is as fine as a book shows",
    );
  });

  it("leaves out specks and closes small holes, and says so", async () => {
    // 1 mm and 3 mm, dark on light and light on dark.
    const body =
      '<rect y="50" width="100" height="50"/><circle cx="20" cy="20" r=".5"/><circle cx="50" cy="20" r="1.5"/><g fill="#fff"><circle cx="20" cy="80" r=".5"/><circle cx="50" cy="80" r="1.5"/></g>';
    const bytes = await drawn(drawing(body), DPI_300).png().toBuffer();
    const { shapes, notes } = traced(bytes);
    expect(shapes[0]!.rings).toHaveLength(3);
    expect(notes.map(({ message }) => message)).toContain("2 parts and holes smaller than 2 mm were left out");
    expect(traced(bytes, { least: 0.5 }).shapes[0]!.rings).toHaveLength(5);
  });
});
