import type { Level } from "../../core/kit/kit.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";

/** A kit's picture as levels. */
export interface KitPicture {
  readonly map: LevelMap;
  /** What does not count or shows nowhere, in sentences with their places. */
  readonly notes: readonly string[];
}

/** What a picture is drawn for: a kit's levels, whose depths do not count, and about how tall it is on the book, mm. */
export interface PictureOf {
  readonly levels: readonly Level[];
  readonly tall: number;
}
