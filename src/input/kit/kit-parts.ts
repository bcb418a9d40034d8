import type { NamedPhoto } from "../files/named-photo.ts";
import type { FieldPath } from "../files/problem.ts";
import type { KitPicture, PictureOf } from "../layers/kit-levels.ts";
import type { PictureMatter } from "../layers/schema.ts";
import type { DrawnMotif } from "./drawn-motif.ts";
import type { StatedMotif } from "./schema-motif.ts";

/** What a kit's text takes of the files beside it. Each throws ProblemError or KitError, as a reader of files does. */
export interface KitParts {
  readonly checkPhotos: (photos: readonly NamedPhoto[]) => void;
  readonly picture: (matter: PictureMatter, of: PictureOf) => KitPicture;
  readonly motif: (stated: StatedMotif, at: FieldPath, of: PictureOf) => DrawnMotif;
}
