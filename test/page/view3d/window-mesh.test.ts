import { describe, expect, it } from "vitest";
import { slabsOf } from "../../../src/page/view3d/slabs.ts";
import { bendFlat, besideHinge, flatMesh } from "../../../src/page/view3d/window-mesh.ts";
import { publishedDemo } from "./made.ts";

const { parts } = publishedDemo("harbour-moon").insert;
// biome-ignore lint/suspicious/noExplicitAny: tests read the published JSON freely
const part = (name: string): any => parts.find((one: { name: string }) => one.name === name);

/** Area of the triangles of one face, mm², by the corners' cross product. */
function faceArea(vertices: Float32Array, at: number): number {
  let sum = 0;
  for (let i = 0; i < vertices.length; i += 9) {
    const [a, b, c] = [0, 3, 6].map((k) => [vertices[i + k]!, vertices[i + k + 1]!, vertices[i + k + 2]!]);
    if (![a, b, c].every((corner) => Math.abs(corner![2]! - at) < 1e-6)) continue;
    sum += Math.abs((b![0]! - a![0]!) * (c![1]! - a![1]!) - (b![1]! - a![1]!) * (c![0]! - a![0]!)) / 2;
  }
  return sum;
}

describe("slabsOf(rings, step)", () => {
  it("fills a square with a hole, in slabs no wider than asked", () => {
    const outer = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ] as const;
    const hole = [
      [3, 3],
      [3, 7],
      [8, 7],
      [8, 3],
    ] as const;
    const slabs = slabsOf([outer, hole], 2);
    const area = slabs.reduce(
      (sum, { left, right, upper, lower }) => sum + ((right - left) * (lower[0] - upper[0] + lower[1] - upper[1])) / 2,
      0,
    );
    expect(area).toBeCloseTo(80, 3);
    for (const { left, right } of slabs) expect(right - left).toBeLessThanOrEqual(2 + 1e-9);
  });
});

describe("flatMesh(outlines, back, front)", () => {
  it.each(["base frame", "glazing", "motif lantern"])("%s has the published area on each face", (name) => {
    const { outlines, area } = part(name);
    const { vertices } = flatMesh(outlines, 0, 1);
    for (const at of [0, 1]) expect(Math.abs(faceArea(vertices, at) / area - 1)).toBeLessThan(2e-3);
  });
});

describe("besideHinge(outlines, hinge, side)", () => {
  it("leaves the door without the flap behind its hinge", () => {
    const { outlines, scores } = part("door");
    const hinge = scores[0][0][0];
    const xs = besideHinge(outlines, hinge, "left")
      .flat()
      .map(([x]) => x);
    expect(Math.min(...xs)).toBeCloseTo(hinge, 6);
    expect(Math.max(...xs)).toBe(Math.max(...outlines.flat().map(([x]: [number]) => x)));
    expect(Math.min(...outlines.flat().map(([x]: [number]) => x))).toBeLessThan(hinge - 5);
  });
});

describe("bendFlat(mesh, panel, leafHeight, pivot, into)", () => {
  it("keeps heights from the head and stands its thickness off the panel", () => {
    const flat = flatMesh(
      [
        [
          [0, 10],
          [4, 10],
          [4, 30],
          [0, 30],
        ],
      ],
      0,
      2,
    );
    const into = new Float32Array(flat.vertices.length);
    bendFlat(flat, (x) => ({ x, z: 50, outX: 0, outZ: 1 }), 200, { x: 1, z: 50 }, into);
    for (let i = 0; i < into.length; i += 3) {
      expect(into[i]).toBeCloseTo(flat.vertices[i]! - 1, 5);
      expect(into[i + 1]).toBeCloseTo(100 - flat.vertices[i + 1]!, 5);
      expect(into[i + 2]).toBeCloseTo(flat.vertices[i + 2]!, 5);
    }
  });
});
