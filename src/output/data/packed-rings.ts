import type { Area } from "../../core/geometry/area.ts";
import type { Ring } from "../../core/geometry/point.ts";

/** Outlines as a short text: decimals, then for each outline its places across and down. */
export type PackedRings = readonly [decimals: number, ...outlines: (readonly [across: string, down: string])[]];

/** Letters for the numbers 0 to 63; those from 32 say that more of the number follows. */
const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/** Most decimals that are tried, and most of a number that is told exactly. */
const FINEST = 12;
const MOST = 2 ** 49;

/**
 * Packs outlines without loss. Told are third differences: on the even steps of a curve they hardly change. Outlines with more
 * decimals than can be packed stay as they are.
 */
export function packRings(rings: Area): PackedRings | Area {
  for (let decimals = 0; decimals <= FINEST; decimals += 1) {
    const scale = 10 ** decimals;
    const isWhole = (value: number): boolean =>
      Math.round(value * scale) / scale === value && Math.abs(value * scale) < MOST;
    if (!rings.every((ring) => ring.every(([x, y]) => isWhole(x) && isWhole(y)))) continue;
    const packed = (ring: Ring, axis: 0 | 1): string =>
      thirdDifferences(ring.map((point) => Math.round(point[axis] * scale)))
        .map(inLetters)
        .join("");
    return [decimals, ...rings.map((ring) => [packed(ring, 0), packed(ring, 1)] as const)];
  }
  return rings;
}

function thirdDifferences(values: readonly number[]): number[] {
  let told = [...values];
  for (let turn = 0; turn < 3; turn += 1) told = told.map((value, i) => (i === 0 ? value : value - told[i - 1]!));
  return told;
}

/** A whole number: even where it is not negative, then five bits a letter, the lowest first. */
function inLetters(value: number): string {
  let rest = value < 0 ? -2 * value - 1 : 2 * value;
  let text = "";
  for (; rest > 31; rest = Math.floor(rest / 32)) text += LETTERS[(rest % 32) + 32]!;
  return text + LETTERS[rest]!;
}

/** Unpacks outlines that may be packed. Written into scripts as it stands here, so it uses nothing from beside it. */
export function unpackRings(given: PackedRings | Area): Area {
  const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  const values = (text: string): number[] => {
    const told: number[] = [];
    let value = 0;
    let place = 1;
    for (const letter of text) {
      const part = letters.indexOf(letter);
      value += (part % 32) * place;
      place *= 32;
      if (part > 31) continue;
      told.push(value % 2 ? -(value + 1) / 2 : value / 2);
      value = 0;
      place = 1;
    }
    for (let turn = 0; turn < 3; turn += 1) for (let i = 1; i < told.length; i += 1) told[i]! += told[i - 1]!;
    return told;
  };
  const [decimals, ...outlines] = given;
  if (typeof decimals !== "number") return given as Area;
  const scale = 10 ** decimals;
  return (outlines as [string, string][]).map(([across, down]) => {
    const ys = values(down);
    return values(across).map((x, i) => [x / scale, ys[i]! / scale] as const);
  });
}
