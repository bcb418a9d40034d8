import { describe, expect, it } from "vitest";
import { layFaces } from "../../../src/core/fit/face.ts";

/** Ten cells of growing width, so that cells and stations cannot be mixed up. */
const EDGES = [0, 2, 5, 9, 14, 20, 27, 35, 44, 54, 65];
const FRONT = {
  edges: EDGES,
  stations: EDGES.slice(1).map((edge, i) => (edge + EDGES[i]!) / 2),
  width: 65,
};

/** What each cell shows at its left and right edge, lost ones left out. */
function shown(lost: readonly number[]): { cell: number; from: number; to: number }[] {
  const faces = layFaces(FRONT, lost);
  return faces
    .map((face, cell) => ({ cell, from: face(EDGES[cell]!), to: face(EDGES[cell + 1]! - 1e-9) }))
    .filter(({ cell }) => !lost.includes(cell));
}

describe("layFaces(front, lost)", () => {
  it("lays the picture evenly over the front, and beyond its edges", () => {
    const faces = layFaces(FRONT, []);
    expect(faces).toHaveLength(10);
    for (const face of faces) {
      expect([0, 13, 32.5, 65, -6.5, 71.5].map(face)).toEqual(
        [0, 0.2, 0.5, 1, -0.1, 1.1].map((f) => expect.closeTo(f, 12)),
      );
    }
  });

  const cases: [string, number[]][] = [
    ["one leaf", [3]],
    ["the first leaf", [0]],
    ["two neighbours", [4, 5]],
    ["two leaves apart", [2, 6]],
    ["the first and a later leaf", [0, 7]],
    ["three, listed out of order", [8, 1, 4]],
  ];

  it.each(cases)("shows the whole picture without a gap when %s is lost", (_, lost) => {
    const parts = shown(lost);
    expect(parts[0]!.from).toBeCloseTo(0, 9);
    expect(parts.at(-1)!.to).toBeCloseTo(1, 6);
    parts.slice(1).forEach((part, i) => {
      expect(part.from).toBeCloseTo(parts[i]!.to, 6);
    });
    for (const part of parts) expect(part.to).toBeGreaterThan(part.from);
  });

  it.each(cases)("leaves the leaves before the first lost one as they were when %s is lost", (_, lost) => {
    const plain = layFaces(FRONT, []);
    layFaces(FRONT, lost)
      .slice(0, Math.min(...lost))
      .forEach((face, cell) => {
        for (const station of [-3, 1, 20, 64, 70]) expect(face(station)).toBe(plain[cell]!(station));
      });
  });

  it("spreads the rest evenly over the width that remains", () => {
    // Cell 3 (9 … 14) is lost: what stood from 9 to 65 is shown from 14 to 65.
    const face = layFaces(FRONT, [3])[9]!;
    expect(face(14)).toBeCloseTo(9 / 65, 12);
    expect(face(39.5)).toBeCloseTo(9 / 65 + 28 / 65, 12);
    expect(face(65)).toBeCloseTo(1, 12);
  });

  it("keeps what was folded between two losses", () => {
    const [one, two] = [layFaces(FRONT, [2]), layFaces(FRONT, [2, 6])];
    for (const cell of [3, 4, 5]) expect(two[cell]!(FRONT.stations[cell]!)).toBe(one[cell]!(FRONT.stations[cell]!));
    expect(two[7]!(35)).toBeCloseTo(one[5]!(27), 12);
  });

  it("keeps what was folded before a loss also where a later leaf looks back at it, and beyond the edges", () => {
    // By hand: cells 2 (5 … 9) and 6 (27 … 35) are lost; what stands before 5 is as it was for every leaf.
    for (const cell of [3, 5, 7, 9]) expect(layFaces(FRONT, [2, 6])[cell]!(3)).toBeCloseTo(3 / 65, 12);
    // Without the first cell (0 … 2) the picture lies from 2 to 65, and goes on beyond both.
    const face = layFaces(FRONT, [0])[5]!;
    expect([-3, 2, 65, 71.3].map(face)).toEqual([-5 / 63, 0, 1, 69.3 / 63].map((f) => expect.closeTo(f, 12)));
  });

  it("leaves a lost last leaf the map that the others have", () => {
    const face = layFaces(FRONT, [9])[9]!;
    expect([10, 60, 65].map(face)).toEqual([10 / 65, 60 / 65, 1].map((f) => expect.closeTo(f, 12)));
  });

  it("can do nothing about a lost last leaf", () => {
    expect(shown([9]).at(-1)!.to).toBeCloseTo(54 / 65, 6);
  });
});
