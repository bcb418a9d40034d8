import type { LeafNumber } from "../book/leaf-number.ts";
import { lazily } from "../lazily.ts";
import type { MergedOnLeaf, Pattern } from "../pattern/pattern.ts";
import type { PicturePlace } from "./picture-place.ts";

/** Merged strips of neighbouring leaves that lie side by side: one place where the picture changes a little. Lengths mm. */
export interface Sliver {
  readonly level: number;
  /** The level that most of its strips were merged with. */
  readonly into: number;
  readonly strips: number;
  readonly firstLeaf: LeafNumber;
  readonly lastLeaf: LeafNumber;
  /** From the head. */
  readonly from: number;
  readonly to: number;
  /** From the fan's middle. */
  readonly left: number;
  readonly right: number;
  /** On the front, mm², and as a share of all that the picture has of the level. */
  readonly area: number;
  readonly share: number;
}

/** Strips of neighbouring leaves, one of each. */
type Group = MergedOnLeaf[];

/** Places of merged strips, the largest first. `areas` are those of the levels, which only the shares ask for. */
export function sliversOf(pattern: Pattern, place: PicturePlace, areas: () => readonly number[]): Sliver[] {
  const groups: Group[] = [];
  let before: readonly Group[] = [];
  for (const strips of stripsOfLeaves(pattern.merged)) {
    const [leaf, last] = [strips[0]!.leaf, before[0]?.at(-1)];
    before = joinLeaves(last && leaf - last.leaf === 1 ? before : [], strips, pattern.fit.leastTab, groups);
  }
  return groups.map((strips) => sliverOf(strips, place, areas)).toSorted((a, b) => b.area - a.area);
}

/** The strips of each leaf from the head, in book order. */
function stripsOfLeaves(merged: readonly MergedOnLeaf[]): readonly (readonly MergedOnLeaf[])[] {
  const leaves = new Map<LeafNumber, MergedOnLeaf[]>();
  for (const strip of merged) {
    const own = leaves.get(strip.leaf);
    if (own) own.push(strip);
    else leaves.set(strip.leaf, [strip]);
  }
  return [...leaves.values()].map((strips) => strips.toSorted((a, b) => a.from - b.from));
}

/**
 * Goes on with the groups of the leaf before, each once, where a strip of the same level lies at nearly the same heights;
 * gives the groups that end on this leaf, from the head. New ones are added to `all`.
 */
function joinLeaves(
  before: readonly Group[],
  strips: readonly MergedOnLeaf[],
  leastTab: number,
  all: Group[],
): readonly Group[] {
  let next = 0;
  return strips.map((strip) => {
    while (next < before.length && before[next]!.at(-1)!.to < strip.from - leastTab) next += 1;
    const group = before[next];
    const last = group?.at(-1);
    if (!group || !last || last.level !== strip.level || last.from > strip.to + leastTab) {
      const begun = [strip];
      all.push(begun);
      return begun;
    }
    next += 1;
    group.push(strip);
    return group;
  });
}

function sliverOf(strips: readonly MergedOnLeaf[], place: PicturePlace, areas: () => readonly number[]): Sliver {
  const { level } = strips[0]!;
  const boxes = strips.map((strip) => {
    const { left, right } = place.column(strip.leaf);
    return { left, right, area: (right - left) * (strip.to - strip.from) };
  });
  const area = boxes.reduce((sum, box) => sum + box.area, 0);
  const share = (): number => {
    const whole = areas()[level - 1]!;
    return whole > 0 ? Math.min(1, area / whole) : 0;
  };
  const sliver: Omit<Sliver, "share"> = {
    level,
    into: mostOften(strips.map(({ into }) => into)),
    strips: strips.length,
    firstLeaf: strips[0]!.leaf,
    lastLeaf: strips.at(-1)!.leaf,
    from: Math.min(...strips.map(({ from }) => from)),
    to: Math.max(...strips.map(({ to }) => to)),
    left: Math.min(...boxes.map(({ left }) => left)),
    right: Math.max(...boxes.map(({ right }) => right)),
    area,
  };
  return lazily({ share }, sliver);
}

function mostOften(levels: readonly number[]): number {
  const times = new Map<number, number>();
  for (const level of levels) times.set(level, (times.get(level) ?? 0) + 1);
  return [...times].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
}
