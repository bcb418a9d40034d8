import type { Motif } from "../../core/window/motif.ts";
import { checkPhotos, type KitFolder } from "../files/named-files.ts";
import type { OwnFont } from "../fonts/own-fonts.ts";
import { PictureFiles } from "../layers/draw-file.ts";
import { kitPicture } from "../layers/kit-picture.ts";
import { drawMotif } from "./draw-motif.ts";
import { fromShelf } from "./from-shelf.ts";
import type { KitParts } from "./kit-parts.ts";

/** Motifs that are not sized in mm are drawn as large as they usually become: such a share of the picture. */
const USUAL_SHARE = 1 / 4;

/** What a site lends to its kits: motifs to pick from, and the fonts of its settings. */
export interface Lent {
  readonly shelf: readonly Motif[];
  readonly fonts: readonly OwnFont[];
}

/** The parts of a kit as the files of its folder have them; `files` are those that were read on the way. */
export function partsOfFiles(folder: KitFolder, { shelf, fonts }: Lent): KitParts & { readonly files: PictureFiles } {
  const files = new PictureFiles(folder, fonts);
  return {
    files,
    checkPhotos: (photos) => checkPhotos(folder, photos),
    picture: (matter, of) => kitPicture(files, matter, of),
    motif: (stated, at, { levels, tall }) => {
      const { motif: name } = stated;
      const own = name === undefined ? undefined : fromShelf(name, [...at, "motif"], shelf);
      const side = tall * USUAL_SHARE;
      return drawMotif(stated, at, { files, levels, box: { width: side, height: side }, tall: side }, own);
    },
  };
}
