import type { LeafNumber } from "../book/leaf-number.ts";
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

interface Group {
  readonly strips: MergedOnLeaf[];
  last: MergedOnLeaf;
}

/** Places of merged strips, the largest first. `areas` are those of the levels. */
export function sliversOf(pattern: Pattern, place: PicturePlace, areas: readonly number[]): Sliver[] {
  const groups: Group[] = [];
  let open: Group[] = [];
  for (const strip of pattern.merged) {
    open = open.filter(({ last }) => strip.leaf - last.leaf <= 1);
    const group = open.find(
      ({ last }) => last.level === strip.level && last.leaf < strip.leaf && near(last, strip, pattern),
    );
    if (group) {
      group.strips.push(strip);
      group.last = strip;
      continue;
    }
    const begun = { strips: [strip], last: strip };
    groups.push(begun);
    open.push(begun);
  }
  return groups.map(({ strips }) => sliverOf(strips, place, areas)).toSorted((a, b) => b.area - a.area);
}

/** Neighbours belong together where their heights meet, or nearly. */
function near(a: MergedOnLeaf, b: MergedOnLeaf, { fit }: Pattern): boolean {
  return b.from <= a.to + fit.leastTab && b.to >= a.from - fit.leastTab;
}

function sliverOf(strips: readonly MergedOnLeaf[], place: PicturePlace, areas: readonly number[]): Sliver {
  const { level } = strips[0]!;
  const boxes = strips.map((strip) => {
    const { left, right } = place.column(strip.leaf);
    return { left, right, area: (right - left) * (strip.to - strip.from) };
  });
  const area = boxes.reduce((sum, box) => sum + box.area, 0);
  return {
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
    share: areas[level - 1]! > 0 ? Math.min(1, area / areas[level - 1]!) : 0,
  };
}

function mostOften(levels: readonly number[]): number {
  const times = (level: number): number => levels.filter((one) => one === level).length;
  return levels.reduce((best, level) => (times(level) > times(best) ? level : best));
}
