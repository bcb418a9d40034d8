import type { Marked } from "../../core/beginning/picture-wish.ts";
import type { Selector } from "../../input/picture/selection.ts";

/** Which shapes or colours of a picture belong to which level, as front matter states it. */
export interface MarkedLevels {
  readonly fields: Readonly<Record<string, unknown>>;
  /** Names of the levels, front to back. */
  readonly names: readonly string[];
  /** Whether the last one is the ground. */
  readonly grounded: boolean;
}

/** Marks by their levels. A level is called after the first of its marks, the ground after the last; one without a mark is left out. */
export function markedLevels(marks: readonly Marked[]): MarkedLevels {
  const drawn = [...new Set(marks.map(({ level }) => level))].filter((level) => level > 0).toSorted((a, b) => a - b);
  const grounded = marks.some(({ level }) => level === 0);
  const order = grounded ? [...drawn, 0] : drawn;
  const groups = order.map((level) => marks.filter((mark) => mark.level === level));
  const names = groups.map((group) => (group[0]!.level === 0 ? group.at(-1)! : group[0]!).name);
  const levels = groups.map((group, i) => [names[i]!, selectionOf(group)]);
  return { fields: { levels: Object.fromEntries(levels) }, names, grounded };
}

function selectionOf(group: readonly Marked[]): Selector | readonly Selector[] {
  const selectors = group.map(({ selector }) => selector);
  return selectors.length === 1 ? selectors[0]! : selectors;
}
