import { describe, expect, it } from "vitest";
import type { RoundData } from "../../../src/output/data/round-data.ts";
import { type LeafMesh, leafMesh, poseLeaves } from "../../../src/page/view3d/leaf-mesh.ts";
import { fanAt } from "../../../src/page/view3d/pose.ts";
import { dataOf, publishedDemo } from "./made.ts";

function posed(mesh: LeafMesh, data: RoundData, opening = data.fit.opening) {
  const positions = new Float32Array(3 * mesh.leaf.length);
  const normals = new Float32Array(3 * mesh.leaf.length);
  poseLeaves(mesh, fanAt(data, opening), data.book.leafHeight, { positions, normals });
  return { positions, normals };
}

/** Vertices by number that answer yes. */
function vertices(mesh: LeafMesh, wanted: (i: number) => boolean): number[] {
  return Array.from(mesh.leaf.keys()).filter(wanted);
}

/** Six times the volume between the triangles of some vertices and the origin. */
function volume(mesh: LeafMesh, positions: Float32Array): number {
  let sum = 0;
  for (let t = 0; t < mesh.index.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((d) => positions[3 * mesh.index[t + k]! + d]!));
    sum +=
      a![0]! * (b![1]! * c![2]! - b![2]! * c![1]!) +
      a![1]! * (b![2]! * c![0]! - b![0]! * c![2]!) +
      a![2]! * (b![0]! * c![1]! - b![1]! * c![0]!);
  }
  return sum / 6;
}

/** Surface of one leaf, mm². */
function surface(mesh: LeafMesh, positions: Float32Array, leaf: number): number {
  let sum = 0;
  for (let t = 0; t < mesh.index.length; t += 3) {
    if (Math.round(mesh.leaf[mesh.index[t]!]! - 0.3) !== leaf) continue;
    const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((d) => positions[3 * mesh.index[t + k]! + d]!));
    const u = b!.map((value, d) => value - a![d]!);
    const v = c!.map((value, d) => value - a![d]!);
    sum += Math.hypot(u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!) / 2;
  }
  return sum;
}

const KITS = [
  ["harbour-moon, flat, left to right", publishedDemo("harbour-moon")],
  ["tide-and-lamp, right to left", publishedDemo("tide-and-lamp")],
  ["little-gull, rounded", publishedDemo("little-gull", (front) => Object.assign(front.fit, { spine: "rounded" }))],
] as const;

describe("leafMesh(data)", () => {
  describe.each(KITS)("%s", (_, pattern) => {
    const data = dataOf(pattern);
    const mesh = leafMesh(data);
    const { positions, normals } = posed(mesh, data);
    const W = pattern.book.leafWidth;

    it("puts each folded tip where pattern.json says it is seen", () => {
      let seen = 0;
      const notched = new Set((pattern.light?.notches ?? []).map((notch: { leaf: number }) => notch.leaf));
      for (const leaf of pattern.leaves.filter((_: unknown, i: number) => i % 9 === 4)) {
        if (notched.has(leaf.leaf)) continue;
        for (const level of new Set<number>(leaf.spans.map((span: { level: number }) => span.level))) {
          const radius = W - pattern.levels[level - 1].depth;
          const tips = vertices(
            mesh,
            (i) =>
              mesh.leaf[i] === leaf.leaf - 1 && mesh.level[i] === level && Math.abs(mesh.radius[i]! - radius) < 1e-4,
          );
          expect(tips.length).toBeGreaterThan(0);
          for (const i of tips) expect(positions[3 * i]!).toBeCloseTo(leaf.x[level - 1], 2);
          seen += tips.length;
        }
      }
      expect(seen).toBeGreaterThan(40);
    });

    it("reaches exactly to the tip, and its flaps lie between W − 2d and the tip on the way to the next leaf", () => {
      pattern.levels.forEach(({ depth }: { depth: number }, k: number) => {
        const all = vertices(mesh, (i) => mesh.level[i] === k + 1);
        expect(Math.max(...all.map((i) => mesh.radius[i]!))).toBeCloseTo(W - depth, 4);
        const flaps = all.filter((i) => mesh.leaf[i]! - Math.round(mesh.leaf[i]! - 0.3) > 0.3);
        expect(flaps.length).toBeGreaterThan(0);
        expect(Math.min(...flaps.map((i) => mesh.radius[i]!))).toBeCloseTo(W - 2 * depth, 4);
        for (const i of flaps) expect(mesh.leaf[i]! - Math.round(mesh.leaf[i]! - 0.3)).toBeLessThan(0.8);
      });
    });

    it("covers each leaf's height from head to tail with its spans", () => {
      const leaf = pattern.leaves.find((one: { spans: unknown[] }) => one.spans.length > 2);
      const own = vertices(mesh, (i) => mesh.leaf[i] === leaf.leaf - 1);
      const marks = new Set(own.map((i) => mesh.height[i]!.toFixed(3)));
      for (const span of leaf.spans) {
        expect(marks).toContain(Math.fround(span.from).toFixed(3));
        expect(marks).toContain(Math.fround(span.to).toFixed(3));
      }
      for (const i of own) expect(positions[3 * i + 1]!).toBeCloseTo(pattern.book.leafHeight / 2 - mesh.height[i]!, 4);
    });

    it("is a solid whose triangles and normals look outward", () => {
      expect(volume(mesh, positions)).toBeGreaterThan(0);
      for (let i = 0; i < mesh.leaf.length; i += 97)
        expect(Math.hypot(normals[3 * i]!, normals[3 * i + 1]!, normals[3 * i + 2]!)).toBeCloseTo(1, 5);
    });
  });

  it("lets nothing stand in a notch, and takes that paper away", () => {
    const pattern = KITS[0][1];
    const data = dataOf(pattern);
    const { light: _, ...dark } = data;
    const [mesh, whole] = [leafMesh(data), leafMesh(dark)];
    const [notched, plain] = [posed(mesh, data).positions, posed(whole, dark).positions];
    expect(pattern.light.notches.length).toBeGreaterThan(10);
    for (const notch of pattern.light.notches) {
      const inside = vertices(
        mesh,
        (i) =>
          Math.round(mesh.leaf[i]! - 0.3) === notch.leaf - 1 &&
          mesh.height[i]! > notch.from + 1e-3 &&
          mesh.height[i]! < notch.to - 1e-3,
      );
      for (const i of inside) expect(mesh.radius[i]!).toBeLessThanOrEqual(pattern.book.leafWidth - notch.depth + 1e-4);
      expect(surface(mesh, notched, notch.leaf - 1)).toBeLessThan(surface(whole, plain, notch.leaf - 1) + 1e-3);
    }
    const deepest = pattern.light.notches.toSorted(
      (a: { depth: number }, b: { depth: number }) => b.depth - a.depth,
    )[0];
    const tip = pattern.levels.at(-1).depth;
    const least = (deepest.depth - tip) * (deepest.to - deepest.from);
    expect(surface(whole, plain, deepest.leaf - 1) - surface(mesh, notched, deepest.leaf - 1)).toBeGreaterThan(least);
  });

  it("has no leaf where one is lost, and whole leaves where none is folded", () => {
    const pattern = publishedDemo("little-gull", (front) => Object.assign(front.fit, { lostLeaves: [50] }));
    const data = { ...dataOf(pattern), leaves: dataOf(pattern).leaves.filter(({ leaf }) => leaf !== 60) };
    const mesh = leafMesh(data);
    expect(vertices(mesh, (i) => Math.round(mesh.leaf[i]! - 0.3) === 49)).toEqual([]);
    const whole = vertices(mesh, (i) => Math.round(mesh.leaf[i]! - 0.3) === 59);
    expect(Math.max(...whole.map((i) => mesh.radius[i]!))).toBeCloseTo(pattern.book.leafWidth, 4);
    expect(new Set(whole.map((i) => mesh.level[i]))).toEqual(new Set([0]));
  });

  it("moves with the opening and stays in its leaf", () => {
    const pattern = KITS[0][1];
    const data = dataOf(pattern);
    const mesh = leafMesh(data);
    const opening = (110 * Math.PI) / 180;
    const { positions } = posed(mesh, data, opening);
    const { leaves: N, leafWidth: W, blockThickness: T } = pattern.book;
    for (let i = 0; i < mesh.leaf.length; i += 1013) {
      const share = (mesh.leaf[i]! + 0.5) / N - 0.5;
      const angle = opening * share;
      expect(positions[3 * i]!).toBeCloseTo(T * share + mesh.radius[i]! * Math.sin(angle), 2);
      expect(positions[3 * i + 2]!).toBeCloseTo(mesh.radius[i]! * Math.cos(angle), 2);
      expect(mesh.radius[i]!).toBeLessThanOrEqual(W);
    }
  });

  it("stays small enough to be drawn at once", () => {
    for (const [, pattern] of KITS) expect(leafMesh(dataOf(pattern)).index.length / 3).toBeLessThan(80_000);
  });
});
