import type { Parting, PictureWish } from "../../core/beginning/picture-wish.ts";
import { type ContentKind, contentKind } from "../../input/files/content-kind.ts";
import { shortValue } from "../../input/files/short.ts";
import { readPicture } from "../../input/picture/read-picture.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { type MarkedLevels, markedLevels } from "./marked-levels.ts";
import type { Sketch } from "./sketch.ts";
import { svgLevels } from "./svg-levels.ts";

/** A picture file, whoever brought it. */
interface Brought {
  readonly name: string;
  readonly bytes: Buffer;
  readonly wish: PictureWish;
}

/** How the copy of a picture in a kit's folder ends, by what it is. */
const ENDINGS: Readonly<Partial<Record<ContentKind, string>>> = {
  svg: ".svg",
  png: ".png",
  jpeg: ".jpg",
  webp: ".webp",
  avif: ".avif",
};

/** Levels of tones that say nothing of their number. */
const USUAL_TONES = 3;

/** What a file is called in a kit's folder. @throws BuildError for what is no picture */
export function pictureName(name: string, bytes: Buffer): string {
  const kind = contentKind(bytes);
  const ending = kind && ENDINGS[kind];
  if (!ending) throw new BuildError(say.newFileKind({ file: shortValue(name) }));
  return `picture${ending}`;
}

/** A brought picture as front matter states it. @throws BuildError for what is no picture; KitError for a drawing that cannot be read */
export function broughtSketch({ name, bytes, wish }: Brought): Sketch {
  const file = pictureName(name, bytes);
  const crop = wish.crop === undefined ? {} : { crop: wish.crop };
  const { fields, names, grounded } =
    file === "picture.svg" ? drawnLevels({ name, bytes, wish }) : partedLevels(wish.parting, wish);
  return {
    picture: { file, ...fields, ...crop },
    levels: names,
    grounded,
    files: [{ name: file, bytes }],
    credit: undefined,
  };
}

/** A drawing's levels as its shapes were marked, else as it has them by itself; with no mark at all it is one level. */
function drawnLevels({ name, bytes, wish }: Brought): MarkedLevels {
  const only = say.newLevelPicture();
  if (wish.marks?.length === 0) return { fields: { level: only }, names: [only], grounded: false };
  if (wish.marks) return markedLevels(wish.marks);
  return svgLevels(readPicture(shortValue(name), bytes.toString("utf8"), say.checkFieldPicture()), only);
}

/** A photograph's levels: what stands out before the rest, one after the other by lightness, or by its colours. */
function partedLevels(parting: Parting = { trace: "silhouette" }, { marks = [] }: PictureWish): MarkedLevels {
  const { trace, near, limits, tolerance, least } = parting;
  const fine = { ...(tolerance === undefined ? {} : { tolerance }), ...(least === undefined ? {} : { least }) };
  if (trace === "colours") {
    const { fields, ...levels } = markedLevels(marks);
    return { fields: { trace, ...fields, ...fine }, ...levels };
  }
  const steering = { ...(near === undefined ? {} : { near }), ...(limits === undefined ? {} : { limits }), ...fine };
  if (trace === "silhouette") {
    const level = say.newLevelPicture();
    return { fields: { trace, level, ...steering }, names: [level], grounded: false };
  }
  const count = parting.levels ?? USUAL_TONES;
  const names = Array.from({ length: count - 1 }, (_, i) => say.newLevelNumber({ number: i + 1 }));
  return { fields: { trace, ...steering }, names: [...names, say.newLevelGround()], grounded: true };
}
