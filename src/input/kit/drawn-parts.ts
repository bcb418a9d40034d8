import { isRasterName } from "../files/photo-kinds.ts";
import type { FieldPath } from "../files/problem.ts";
import type { KitPicture } from "../layers/kit-levels.ts";
import type { DrawnMotif } from "./drawn-motif.ts";
import type { KitParts } from "./kit-parts.ts";
import type { KitText } from "./state-kit.ts";
import { tallOf } from "./tall-of.ts";

/** What the files of a kit drew for one text of it, as plain data: whoever has no files can state the kit with it. */
export interface DrawnParts {
  readonly picture: KitPicture;
  /** Of each motif that the text sets, in their order. */
  readonly motifs: readonly DrawnMotif[];
}

/** Parts that note what they draw; `drawn` is undefined as long as there is no picture, or a motif failed. */
export function notedParts(parts: KitParts): KitParts & { readonly drawn: () => DrawnParts | undefined } {
  let picture: KitPicture | undefined;
  const motifs = new Map<number, DrawnMotif>();
  let asked = 0;
  return {
    checkPhotos: parts.checkPhotos,
    picture: (...asks) => {
      picture = parts.picture(...asks);
      return picture;
    },
    motif: (stated, at, of) => {
      asked += 1;
      const drawn = parts.motif(stated, at, of);
      motifs.set(placeOf(at), drawn);
      return drawn;
    },
    drawn: () => {
      if (picture === undefined || motifs.size < asked) return undefined;
      return { picture, motifs: [...motifs].sort(([a], [b]) => a - b).map(([, drawn]) => drawn) };
    },
  };
}

/** Parts as they were drawn before, for a text with the same `drawingKey`. Photos are not looked at again. */
export function partsAsDrawn({ picture, motifs }: DrawnParts): KitParts {
  return {
    checkPhotos: () => {},
    picture: () => picture,
    motif: (_, at) => {
      const drawn = motifs[placeOf(at)];
      if (drawn === undefined) throw new Error(`no motif was drawn for ${at.join(".")}`);
      return drawn;
    },
  };
}

/**
 * What drawings depend on, as a text: two texts of one kit with the same key draw the same. Depths of levels do not count, and
 * the height on the book only for what is drawn to it: photographs, and motifs that are no plain ones of the shelf.
 */
export function drawingKey(text: Pick<KitText, "data">): string {
  const { picture, insert } = text.data;
  const isPlain = (insert?.motifs ?? []).every(({ motif, join, cut }) => motif && join.length + cut.length === 0);
  const tall = isPlain && !drawnToHeight(picture) ? 0 : tallOf(text.data);
  return `${tall} ${lookKey(text)}`;
}

/** The same but for the height on the book: what is drawn for another height looks nearly the same. */
export function lookKey({ data }: Pick<KitText, "data">): string {
  const { picture, insert, light, levels, photos } = data;
  const motifs = (insert?.motifs ?? []).map(({ at, name, spacer, card, covers, ...drawn }) => drawn);
  const names = levels.map(({ name, background }) => [name, background ?? false]);
  return JSON.stringify([picture, motifs, names, photos.map(({ file }) => file), light !== undefined]);
}

/** Whether a raster file is anywhere in a picture: it is traced as finely as its height on the book calls for. */
function drawnToHeight(picture: unknown): boolean {
  if (Array.isArray(picture)) return picture.some(drawnToHeight);
  if (typeof picture !== "object" || picture === null) return false;
  if ("file" in picture && typeof picture.file === "string" && isRasterName(picture.file)) return true;
  return Object.values(picture).some(drawnToHeight);
}

/** The place of a motif in the list of the window: `insert.motifs.<place>`. */
function placeOf(at: FieldPath): number {
  return Number(at[2]);
}
