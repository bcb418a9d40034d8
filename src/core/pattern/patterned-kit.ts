import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "./pattern.ts";

/** A kit with its pattern on its own book. */
export interface PatternedKit {
  readonly kit: Kit;
  readonly pattern: Pattern;
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
}
