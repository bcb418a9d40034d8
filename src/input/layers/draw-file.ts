import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type KitFolder, pictureBytes, pictureText } from "../files/named-files.ts";
import type { FieldPath } from "../files/problem.ts";
import type { OwnFont } from "../fonts/own-fonts.ts";
import type { Asked } from "../picture/asked.ts";
import { drawSvg } from "../picture/assign-levels.ts";
import { type Crop, cropDrawn } from "../picture/crop.ts";
import type { Drawn } from "../picture/drawn.ts";
import type { DrawnSvg } from "../picture/drawn-svg.ts";
import { foundIn, foundText } from "../picture/found-in.ts";
import { readPicture } from "../picture/read-picture.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";
import { Allowance } from "./allowance.ts";

/** What a source draws, and the file below the project that its notes are about. */
export interface DrawnSource extends Drawn {
  readonly file: string | undefined;
}

/** A file that a source draws. */
export interface DrawnFile extends DrawnSvg {
  readonly file: string;
}

/** A picture file as it was read. */
export interface PictureFile {
  readonly file: string;
  readonly painted: SvgPicture;
}

/** A photograph or a scan as it was read. */
export type RasterBytes = ReturnType<typeof pictureBytes>;

/** Decoded pictures are large: so many that were used last are kept. */
const MOST_DECODED = 3;

/** The picture files of a kit, each read once, whatever number of layers it stands in, and the fonts that its words may name. */
export class PictureFiles {
  readonly kit: KitFolder;
  readonly fonts: readonly OwnFont[];
  readonly allowance = new Allowance();
  readonly #read = new Map<string, PictureFile>();
  readonly #bytes = new Map<string, RasterBytes>();

  constructor(kit: KitFolder, fonts: readonly OwnFont[] = []) {
    this.kit = kit;
    this.fonts = fonts;
  }

  /** The file that a front matter names at `at`. @throws ProblemError, KitError */
  read(name: string, at: FieldPath): PictureFile {
    const known = this.#read.get(name);
    if (known) return known;
    const { file, text } = pictureText(this.kit, name, at);
    const read = { file, painted: readPicture(file, text, say.checkFieldPicture()) };
    this.#read.set(name, read);
    return read;
  }

  /** By what shapes of the drawings that were read can be picked, with the share of each: a text for each file. */
  offers(): string[] {
    return [...this.#read.values()].map(({ file, painted }) => {
      const found = foundText(foundIn(painted));
      return found === "" ? say.selectNothingIn({ file }) : say.selectOffersOf({ file, found });
    });
  }

  /** The photograph or scan that a front matter names at `at`: the same bytes each time, which are decoded once. @throws ProblemError */
  bytes(name: string, at: FieldPath): RasterBytes {
    const known = this.#bytes.get(name) ?? pictureBytes(this.kit, name, at);
    this.#bytes.delete(name);
    this.#bytes.set(name, known);
    const [oldest] = this.#bytes.keys();
    if (this.#bytes.size > MOST_DECODED) this.#bytes.delete(oldest!);
    return known;
  }
}

/** Which shapes of a file are drawn at which levels, and what part of it is the picture. */
export interface AskedFile extends Asked {
  readonly crop: Crop | undefined;
}

/** A file as a source at the field `at`. @throws ProblemError where shapes are picked that it has not, or nothing is drawn */
export function drawFile(
  { file, painted }: PictureFile,
  { crop, ...asked }: AskedFile,
  { at, levels }: { readonly at: FieldPath; readonly levels: readonly Level[] },
): DrawnFile {
  const usual = crop === undefined ? usualCrop(painted, at) : { crop, notes: [] };
  const drawn = drawSvg(painted, asked, levels, { file, at });
  const cropped = cropDrawn(drawn, usual.crop, [...at, "crop"]);
  return { ...cropped, notes: [...cropped.notes, ...usual.notes], file };
}

type UsualCrop = { readonly crop: Crop } & Pick<Drawn, "notes">;

const usualCrops = new WeakMap<SvgPicture, UsualCrop>();

/** What part is taken where nothing is said: by all that is drawn, so that layers with parts of one file fit on each other. */
function usualCrop(painted: SvgPicture, at: FieldPath): UsualCrop {
  const usual = usualCrops.get(painted) ?? cropOfAll(painted, at);
  usualCrops.set(painted, usual);
  return usual;
}

function cropOfAll({ width, height, shapes }: SvgPicture, at: FieldPath): UsualCrop {
  const all = { width, height, notes: [], shapes: shapes.map(({ rings, rule }) => ({ rings, rule, level: 1 })) };
  const taken = cropDrawn(all, undefined, [...at, "crop"]);
  const [x, y] = shapes[0]!.rings[0]![0]!;
  const [movedX, movedY] = taken.shapes[0]!.rings[0]![0]!;
  const box = { x: x - movedX, y: y - movedY, width: taken.width, height: taken.height };
  return { crop: box, notes: taken.notes };
}
