import { type Fan, leafAngle, leafRoot } from "../../core/fan/fan.ts";
import type { RoundData, RoundSpan } from "../../output/data/round-data.ts";
import { cornerStretches, type Stretch } from "./corner-stretches.ts";
import { type Corner, type Profile, profileOf } from "./leaf-profile.ts";

/** All leaves as one mesh that does not depend on the opening: where each vertex sits in the book, and how it faces. */
export interface LeafMesh {
  /** Leaf from 0, with the share of the way to the next one. */
  readonly leaf: Float32Array;
  /** From the root, mm. */
  readonly radius: Float32Array;
  /** From the head, mm. */
  readonly height: Float32Array;
  /** Three numbers a vertex: toward the next leaf, up, out of the book. */
  readonly facing: Float32Array;
  /** How much light reaches it, 0 to 1. */
  readonly light: Float32Array;
  /** Level from 1; 0 on leaves that are not folded. */
  readonly level: Uint8Array;
  /** Three vertices a triangle, counter-clockwise as seen from outside the paper. */
  readonly index: Uint32Array;
}

/** Lays all leaves out as solids: a stretch for each span, parted where a notch begins or ends. Cuts are the gaps between them. */
export function leafMesh(data: RoundData): LeafMesh {
  const maker = new Maker(data.book.direction === "rtl");
  const folded = new Map(data.leaves.map((one) => [one.leaf - 1, one]));
  for (let leaf = 0; leaf < data.book.leaves; leaf += 1) {
    if (data.lostLeaves.includes(leaf + 1)) continue;
    const { corners, spans = [] } = folded.get(leaf) ?? {};
    const stretches = corners ? cornerStretches(corners, data.book) : stretchesOf(data, leaf, spans);
    for (const stretch of stretches) maker.addStretch(leaf, stretch);
  }
  return maker.finish();
}

/** Stands the mesh in a fan: positions and normals, x right, y up from the leaves' middle height, z to the viewer. */
export function poseLeaves(
  mesh: LeafMesh,
  fan: Fan,
  leafHeight: number,
  into: { readonly positions: Float32Array; readonly normals: Float32Array },
): void {
  const turn = fan.direction === "ltr" ? 1 : -1;
  for (let i = 0; i < mesh.leaf.length; i += 1) {
    const angle = leafAngle(fan, mesh.leaf[i]!);
    const root = leafRoot(fan, mesh.leaf[i]!);
    const sin = Math.sin(angle);
    const cos = Math.cos(angle);
    const at = 3 * i;
    into.positions[at] = root.x + mesh.radius[i]! * sin;
    into.positions[at + 1] = leafHeight / 2 - mesh.height[i]!;
    into.positions[at + 2] = root.z + mesh.radius[i]! * cos;
    const [side, up, out] = [turn * mesh.facing[at]!, mesh.facing[at + 1]!, mesh.facing[at + 2]!];
    const length = Math.hypot(side, up, out);
    into.normals[at] = (side * cos + out * sin) / length;
    into.normals[at + 1] = up / length;
    into.normals[at + 2] = (out * cos - side * sin) / length;
  }
}

function stretchesOf(data: RoundData, leaf: number, spans: readonly RoundSpan[]): Stretch[] {
  const { leafHeight, leafWidth } = data.book;
  const notches = (data.light?.notches ?? []).filter((notch) => notch.leaf === leaf + 1);
  const whole = spans.length > 0 ? spans : [{ from: 0, to: leafHeight, level: 0 }];
  return whole.flatMap(({ from, to, level }) => {
    const depth = level === 0 ? 0 : data.levels[level - 1]!.depth;
    const tip = leafWidth - depth;
    const edges = notches.flatMap((notch) => [notch.from, notch.to]).filter((edge) => edge > from && edge < to);
    const heights = [from, ...new Set(edges.sort((a, b) => a - b)), to];
    return heights.slice(1).map((lower, i): Stretch => {
      const upper = heights[i]!;
      const cut = notches.filter((notch) => notch.from < lower && notch.to > upper).map((notch) => notch.depth);
      const end = Math.min(tip, leafWidth - Math.max(0, ...cut));
      const piece = { tip, end, flapEnd: level === 0 ? undefined : leafWidth - 2 * depth };
      return { from: upper, to: lower, level, upper: piece, lower: piece };
    });
  });
}

class Maker {
  readonly #leaf: number[] = [];
  readonly #radius: number[] = [];
  readonly #height: number[] = [];
  readonly #facing: number[] = [];
  readonly #light: number[] = [];
  readonly #level: number[] = [];
  readonly #index: number[] = [];
  readonly #mirrored: boolean;

  constructor(mirrored: boolean) {
    this.#mirrored = mirrored;
  }

  addStretch(leaf: number, stretch: Stretch): void {
    const [upper, lower] = [profileOf(stretch.upper), profileOf(stretch.lower)];
    this.#wall(leaf, stretch, [...upper.before, ...upper.after], [...lower.before, ...lower.after]);
    this.#end(leaf, stretch, upper, stretch.from, 1);
    this.#end(leaf, stretch, lower, stretch.to, -1);
  }

  finish(): LeafMesh {
    return {
      leaf: Float32Array.from(this.#leaf),
      radius: Float32Array.from(this.#radius),
      height: Float32Array.from(this.#height),
      facing: Float32Array.from(this.#facing),
      light: Float32Array.from(this.#light),
      level: Uint8Array.from(this.#level),
      index: Uint32Array.from(this.#index),
    };
  }

  /** The faces round the section; where a folded edge leans, it faces up or down as much as out. */
  #wall(leaf: number, stretch: Stretch, upper: readonly Corner[], lower: readonly Corner[]): void {
    const { from, to, level } = stretch;
    const lean = (stretch.lower.tip - stretch.upper.tip) / (to - from);
    const first = this.#leaf.length;
    for (const [i, one] of upper.entries()) {
      const facing = [one.side, lean * one.out, one.out];
      this.#vertex(leaf, one, from, level, facing, one.light);
      this.#vertex(leaf, lower[i]!, to, level, facing, lower[i]!.light);
    }
    for (let i = 0; i + 1 < upper.length; i += 1) {
      const a = first + 2 * i;
      this.#triangle(a, a + 1, a + 2);
      this.#triangle(a + 2, a + 1, a + 3);
    }
  }

  /** The paper's edge at the top (+1) or bottom (−1) of a stretch. Both sides of the section grow outward, so a zip fills it. */
  #end(leaf: number, { level }: Stretch, { before, after }: Profile, height: number, up: 1 | -1): void {
    const other = after.toReversed();
    const first = this.#leaf.length;
    for (const one of [...before, ...other]) this.#vertex(leaf, one, height, level, [0, up, 0.25], 0.82 * one.light);
    let i = 0;
    let k = 0;
    while (i + 1 < before.length || k + 1 < other.length) {
      const left = before[i + 1]?.radius ?? Number.POSITIVE_INFINITY;
      const right = other[k + 1]?.radius ?? Number.POSITIVE_INFINITY;
      const [a, b] = [first + i, first + before.length + k];
      if (left <= right) i += 1;
      else k += 1;
      const next = left <= right ? first + i : first + before.length + k;
      if (up > 0) this.#triangle(a, next, b);
      else this.#triangle(a, b, next);
    }
  }

  #vertex(
    leaf: number,
    { aside, radius }: Corner,
    height: number,
    level: number,
    facing: readonly number[],
    light: number,
  ): void {
    this.#leaf.push(leaf + aside);
    this.#radius.push(radius);
    this.#height.push(height);
    this.#facing.push(...facing);
    this.#light.push(light);
    this.#level.push(level);
  }

  #triangle(a: number, b: number, c: number): void {
    if (this.#mirrored) this.#index.push(a, c, b);
    else this.#index.push(a, b, c);
  }
}
