import type { Doubt } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "./pattern.ts";

/** A kit with its pattern on its own book. */
export interface PatternedKit {
  readonly kit: Kit;
  readonly pattern: Pattern;
  /** What may disappoint. */
  readonly findings: readonly Doubt[];
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
}
