import type { Size } from "../../core/geometry/box.ts";
import type { Level } from "../../core/kit/kit.ts";
import type { FieldPath } from "../files/problem.ts";
import type { PictureFiles } from "./draw-file.ts";
import type { LevelChoice } from "./level-choice.ts";
import type { Place } from "./place.ts";

/** What sources are drawn with. */
export interface Studio {
  readonly files: PictureFiles;
  readonly levels: readonly Level[];
  /** The picture's box, mm; undefined where a single source is as large as it is itself; an outline always has one. */
  readonly box: Size | undefined;
  /** About how tall the picture is on the book, mm. */
  readonly tall: number;
}

/** Where the source's fields stand, and at which levels it draws. */
export interface Commission {
  readonly at: FieldPath;
  readonly place: Place;
  readonly choice: LevelChoice;
}
