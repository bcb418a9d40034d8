import type { RoundData } from "../../output/data/round-data.ts";
import { insideTone, paperTone } from "../../output/drawing/front/tone.ts";
import type { LeafMesh } from "./leaf-mesh.ts";

/** Colours that tell levels apart, front to back, for all common kinds of colour vision (after Okabe and Ito, 2008); the legend names them. */
export const LEVEL_COLOURS: readonly string[] = [
  "#e69f00",
  "#56b4e9",
  "#009e73",
  "#f0e442",
  "#0072b2",
  "#d55e00",
  "#cc79a7",
  "#8a8f98",
  "#5a4632",
];

/** Leaves are told apart by a slightly darker sheet every other time. */
const GRAIN = 0.93;

type Rgb = readonly [number, number, number];

/** A colour a vertex, linear 0 to 1: paper by depth, or a colour by level; darker between the leaves. */
export function colourLeaves(mesh: LeafMesh, data: RoundData, byLevel: boolean): Float32Array {
  const pairs = Array.from({ length: data.levels.length + 1 }, (_, level) => tonesOf(data, level, byLevel));
  const colours = new Float32Array(3 * mesh.leaf.length);
  for (let i = 0; i < mesh.leaf.length; i += 1) {
    const [lit, dark] = pairs[mesh.level[i]!]!;
    const light = mesh.light[i]!;
    const grain = Math.round(mesh.leaf[i]!) % 2 === 0 ? 1 : GRAIN;
    for (let c = 0; c < 3; c += 1) colours[3 * i + c] = grain * (dark[c]! + (lit[c]! - dark[c]!) * light);
  }
  return colours;
}

/** A level's colour in full light and between the leaves. */
function tonesOf(data: RoundData, level: number, byLevel: boolean): readonly [Rgb, Rgb] {
  if (byLevel && level > 0) {
    const lit = linear(LEVEL_COLOURS[(level - 1) % LEVEL_COLOURS.length]!);
    return [lit, [lit[0] * 0.12, lit[1] * 0.12, lit[2] * 0.12]];
  }
  const front = data.levels[0]!.depth;
  const deepest = data.levels.at(-1)!.depth;
  const depth = level === 0 ? front : data.levels[level - 1]!.depth;
  const share = byLevel ? 0 : Math.max(0, (depth - front) / Math.max(1, deepest - front));
  return [linear(paperTone(share, 1)), linear(insideTone(share, 0.62))];
}

/** From #rrggbb (sRGB, IEC 61966-2-1) to linear light. */
function linear(hex: string): Rgb {
  const at = (start: number): number => {
    const value = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [at(1), at(3), at(5)];
}
