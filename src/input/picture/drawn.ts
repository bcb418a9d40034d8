import type { LevelShape } from "../../core/picture/level-map.ts";

/** What an author may want to know of a source; where it is in a text, with its line from 1. */
export interface DrawnNote {
  readonly line: number | undefined;
  readonly message: string;
}

/** What a source of a picture draws: areas at levels, in units of its own. */
export interface Drawn {
  /** The canvas, > 0; x to the right, y down, its corner at 0,0. */
  readonly width: number;
  readonly height: number;
  /** In painter order: later shapes cover earlier ones. */
  readonly shapes: readonly LevelShape[];
  /** What does not count, or was taken otherwise than drawn. */
  readonly notes: readonly DrawnNote[];
}
