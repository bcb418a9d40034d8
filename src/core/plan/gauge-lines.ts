import type { Kit, Level } from "../kit/kit.ts";

/** A line of the gauge, with the levels that are folded at it. */
export interface GaugeLine {
  /** Undefined for a level's own line, which is none of the gauge's. */
  readonly number: number | undefined;
  /** mm from the fore-edge. */
  readonly depth: number;
  /** By their numbers in the pattern table, from 1. */
  readonly levels: readonly { readonly number: number; readonly name: string }[];
}

/** The gauge's lines and those of levels that stand at none of them, from the fore-edge inward. */
export function gaugeLines(kit: Kit): GaugeLine[] {
  const own = kit.gaugeLines.map((depth, i) => ({
    number: i + 1,
    depth,
    levels: levelsWhere(kit, (level) => level.line === i + 1),
  }));
  const free = kit.levels
    .filter((level) => level.line === undefined)
    .map((level) => ({ number: undefined, depth: level.depth, levels: levelsWhere(kit, (one) => one === level) }));
  return [...own, ...free].sort((a, b) => a.depth - b.depth);
}

function levelsWhere(kit: Kit, wanted: (level: Level) => boolean): GaugeLine["levels"] {
  return kit.levels
    .map((level, i) => ({ level, number: i + 1, name: level.name }))
    .filter(({ level }) => wanted(level))
    .map(({ number, name }) => ({ number, name }));
}
