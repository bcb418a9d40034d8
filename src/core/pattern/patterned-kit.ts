import type { Doubt } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import type { AnyPattern, CornerPattern } from "./corner-pattern.ts";
import type { Pattern, PatternBase } from "./pattern.ts";

/** A kit with its pattern on its own book. */
export interface PatternedKit<Found extends PatternBase = Pattern> {
  readonly kit: Kit;
  readonly pattern: Found;
  /** What may disappoint. */
  readonly findings: readonly Doubt[];
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
}

/** The same, whichever way its leaves are made: `isCut` tells which. */
export type AnyPatternedKit = PatternedKit | PatternedKit<CornerPattern>;

/** A kit with a pattern of either way, of which nothing is told for authors. */
export function patternedAs(kit: Kit, pattern: AnyPattern, findings: readonly Doubt[]): AnyPatternedKit {
  const told = { kit, findings, pictureNotes: [] };
  return pattern.corner ? { ...told, pattern } : { ...told, pattern };
}

export function isCut(computed: AnyPatternedKit): computed is PatternedKit {
  return computed.pattern.corner === undefined;
}
