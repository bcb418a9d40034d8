import { ENCODINGS } from "./encodings.ts";
import { FRONT_MATTERS } from "./front-matters.ts";
import { NAMES } from "./names.ts";
import { PHOTOS } from "./photos.ts";
import { PICTURES } from "./pictures.ts";
import { PLACES } from "./places.ts";
import { RASTERS } from "./rasters.ts";
import type { HostileCase } from "./sound.ts";
import { SOURCES } from "./sources.ts";

/** Projects that want to break the program, be read by it where they should not, or keep it busy. Add what was found. */
export const HOSTILE: readonly HostileCase[] = [
  ...PLACES,
  ...ENCODINGS,
  ...FRONT_MATTERS,
  ...PICTURES,
  ...PHOTOS,
  ...RASTERS,
  ...SOURCES,
  ...NAMES,
];
