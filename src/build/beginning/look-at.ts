import type { BroughtDrawing, BroughtPhotograph } from "../../core/beginning/brought.ts";
import { type Marked, MOST_PARTED } from "../../core/beginning/picture-wish.ts";
import type { Point } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import { decodeText } from "../../input/files/decode.ts";
import { FileError } from "../../input/files/file-error.ts";
import { toldOfFile } from "../../input/files/file-message.ts";
import { FILE_LIMITS, MB } from "../../input/files/site-file.ts";
import { readPicture } from "../../input/picture/read-picture.ts";
import { decoded } from "../../input/raster/draw-raster.ts";
import { isCutOut } from "../../input/raster/layers.ts";
import { histogramOf, lightnessOf, middleLimits } from "../../input/raster/lightness.ts";
import { paletteOf } from "../../input/raster/palette.ts";
import type { SvgPicture } from "../../input/svg/svg-picture.ts";
import { shortRings } from "../../output/drawing/short-path.ts";
import * as say from "../../words/messages.ts";
import { pictureName } from "./brought-sketch.ts";
import { colourName, distinctNames } from "./colour-name.ts";
import { sortingsOf } from "./svg-levels.ts";

/** What there is to see and to choose of a picture that was brought. @throws BuildError for what is no picture, KitError, ProblemError */
export function lookAt(name: string, bytes: Buffer): BroughtDrawing | BroughtPhotograph {
  return pictureName(name, bytes) === "picture.svg" ? drawingIn(name, bytes) : photographIn(name, bytes);
}

function drawingIn(name: string, bytes: Buffer): BroughtDrawing {
  const picture = readPicture(name, textOf(name, bytes), say.checkFieldPicture());
  const { width, height } = picture;
  return { kind: "drawing", width, height, shapes: shownPaths(picture), sortings: sortingsOf(picture) };
}

/** As strictly as the reader of kits takes it. @throws KitError */
function textOf(file: string, bytes: Buffer): string {
  return toldOfFile(() => {
    const most = FILE_LIMITS.picture * MB;
    if (bytes.length > most)
      throw new FileError({ file, kind: "picture" }, { kind: "too-large", size: bytes.length, most });
    const read = decodeText(bytes);
    if ("fault" in read) throw new FileError({ file, kind: "picture" }, read.fault);
    return read.text;
  });
}

/** The longer side of a drawing in units that it is shown with. */
const UNITS = 1000;
/** Letters of all paths together that a page shows at once. */
const MOST_LETTERS = 1_500_000;
/** How far outlines may stray for the sake of that, in those units: from what nobody sees to what is still told apart. */
const STRAYING = [0.2, 0.8, 3, 12] as const;

/** All shapes as paths in a box whose longer side has a thousand units. */
function shownPaths({ shapes, width, height }: SvgPicture): BroughtDrawing["shapes"] {
  const scale = UNITS / Math.max(width, height);
  const scaled = shapes.map(({ rings }) => rings.map((ring) => ring.map(([x, y]): Point => [x * scale, y * scale])));
  const drawn = (straying: number): string[] => scaled.map((rings) => shortRings(thinOut(rings, straying), 1));
  const lettersOf = (paths: readonly string[]): number => paths.reduce((sum, path) => sum + path.length, 0);
  let paths = drawn(STRAYING[0]);
  for (const straying of STRAYING.slice(1)) if (lettersOf(paths) > MOST_LETTERS) paths = drawn(straying);
  return shapes.map(({ rule, colour }, i) => ({ path: paths[i]!, rule, colour }));
}

/** Bars of the histogram are so high at most. */
const HIGH = 100;

function photographIn(name: string, bytes: Buffer): BroughtPhotograph {
  const pixels = decoded(name, bytes, ["picture", "file"]);
  const counts = histogramOf(lightnessOf(pixels), pixels);
  const most = counts.reduce((a, b) => Math.max(a, b), 1);
  const sizes = Array.from({ length: MOST_PARTED - 1 }, (_, i) => i + 2);
  return {
    kind: "photograph",
    ...pixels.saved,
    histogram: Array.from(counts, (count) => Math.round((HIGH * count) / most)),
    limits: sizes.map((size) => (middleLimits(counts, size) ?? []).map(Math.floor)),
    isCutOut: isCutOut(pixels),
    palettes: sizes.map((size) => colourMarks(paletteOf(pixels, size))),
  };
}

/** Colours from the front to the ground. */
function colourMarks(colours: readonly string[]): Marked[] {
  const names = distinctNames(colours.map(colourName));
  return colours.map((fill, i) => ({
    name: names[i]!,
    selector: { fill },
    level: i === colours.length - 1 ? 0 : i + 1,
  }));
}
