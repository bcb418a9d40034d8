import type { Size } from "../../core/geometry/box.ts";
import type { Point } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { isRasterName } from "../files/photo-kinds.ts";
import { type FieldPath, type Problem, type ProblemError, problem, stopAt } from "../files/problem.ts";
import { checkLevelsShown, type NamedMap, unseenParts } from "../picture/unseen-levels.ts";
import { drawFile, type PictureFiles } from "./draw-file.ts";
import { askedOf, drawSource } from "./draw-source.ts";
import { hiddenLayers, hiddenLevels } from "./hidden.ts";
import { inDigits } from "./in-digits.ts";
import type { KitPicture, PictureOf } from "./kit-levels.ts";
import { levelChoice } from "./level-choice.ts";
import { FILLING } from "./place.ts";
import { mapOfLayers, placedNotes, readLayers } from "./read-layers.ts";
import type { PictureMatter, SourceMatter } from "./schema.ts";
import { formProblems } from "./source-form.ts";
import type { Studio } from "./studio.ts";

const AT: FieldPath = ["picture"];

/** Reads the picture that a front matter states. @throws ProblemError, KitError */
export function kitPicture(files: PictureFiles, matter: PictureMatter, wanted: PictureOf): KitPicture {
  const { map, notes } = drawnPicture(files, matter, wanted);
  return { map: inDigits(map), notes };
}

function drawnPicture(files: PictureFiles, matter: PictureMatter, { levels, tall }: PictureOf): KitPicture {
  stopAt(formOf(matter));
  const background = levels.findIndex((level) => level.background) + 1;
  if (matter.layers) {
    const box = boxOfLayers(matter);
    const layers = readLayers(matter.layers, [...AT, "layers"], { files, levels, tall, box });
    const map = mapOfLayers(layers, { ...box, background });
    stopAt(hiddenLevels(map, levels));
    return { map, notes: [...new Set(layers.flatMap(({ notes }) => notes)), ...hiddenLayers(layers, map)] };
  }
  const studio = { files, levels, tall, box: boxOfOutline(matter) };
  if (matter.file !== undefined && !isRasterName(matter.file))
    return inBox(wholeFile(matter, matter.file, studio, background), matter);
  const choice = levelChoice(matter, AT, { levels, whole: true });
  const { notes, file, ...drawn } = drawSource(matter, { at: AT, place: FILLING, choice }, studio);
  const map = { ...drawn, background };
  stopAt(hiddenLevels(map, levels));
  return inBox({ map, notes: placedNotes({ ...drawn, notes, file }) }, matter);
}

/** Every file that a picture names, as it names it. */
export function filesOfPicture({ file, font, layers = [] }: PictureMatter): string[] {
  return [...namesIn({ file, font }), ...layers.flatMap(filesOfSource)];
}

/** Every file that a source and its pieces name. */
export function filesOfSource({ join, cut, ...own }: Naming & Record<"join" | "cut", readonly Naming[]>): string[] {
  return [own, ...join, ...cut].flatMap(namesIn);
}

type Naming = Pick<SourceMatter, "file" | "font">;

function namesIn({ file, font }: Naming): string[] {
  return [file, font].filter((name) => name !== undefined);
}

/** What is wrong with the keys of a picture, of its layers and of their pieces. */
function formOf(matter: PictureMatter): Problem[] {
  const layers = (matter.layers ?? []).flatMap((layer, i) => {
    const at = [...AT, "layers", i];
    const pieces = (["join", "cut"] as const).flatMap((key) =>
      layer[key].flatMap((piece, n) => formProblems(piece, [...at, key, n], "piece")),
    );
    return [...formProblems(layer, at, "layer"), ...pieces];
  });
  return [...formProblems(matter, AT, "picture"), ...layers];
}

/** The stated box of layers. @throws ProblemError where a side is missing */
function boxOfLayers({ width, height }: PictureMatter): Size {
  if (width !== undefined && height !== undefined) return { width, height };
  throw withoutSide(width === undefined ? "width" : "height", say.layerBoxSides());
}

function withoutSide(key: "width" | "height", allowed: string): ProblemError {
  return problem([...AT, key], { given: say.checkNotGiven(), allowed, remedy: say.checkAddField({ field: key }) });
}

/** The box that an outline fills where it is the whole picture; a side that is left out is as long as the other. */
function boxOfOutline(matter: PictureMatter): Size | undefined {
  if (matter.file !== undefined || matter.text !== undefined) return undefined;
  const side = matter.width ?? matter.height;
  if (side === undefined) throw withoutSide("width", say.layerOutlineSide());
  return { width: matter.width ?? side, height: matter.height ?? side };
}

/** A file that is the whole picture: it shows every level of the kit. */
function wholeFile(matter: PictureMatter, name: string, { files, levels }: Studio, background: number): KitPicture {
  const choice = levelChoice(matter, AT, { levels, whole: true });
  const asked = askedOf(matter, choice, levels);
  const drawn = drawFile(files.read(name, [...AT, "file"]), asked, { at: AT, levels });
  const { width, height, shapes } = drawn;
  const named: NamedMap = { width, height, background, shapes };
  checkLevelsShown(named, levels, ({ name: level }, number) =>
    asked.levels === undefined || !Object.hasOwn(asked.levels, level)
      ? { at: ["levels", number - 1], stated: false }
      : { at: [...AT, "levels", level], stated: true },
  );
  const map = { ...named, shapes: shapes.map(({ level, rule, rings }) => ({ level, rule, rings })) };
  return { map, notes: placedNotes({ ...drawn, notes: [...drawn.notes, ...unseenParts(named, levels)] }) };
}

/** A picture in the size that is stated; one side keeps its shape. */
export function inBox({ map, notes }: KitPicture, { width, height }: PictureMatter): KitPicture {
  if (width === undefined && height === undefined) return { map, notes };
  const across = (width ?? (height! * map.width) / map.height) / map.width;
  const down = (height ?? (width! * map.height) / map.width) / map.height;
  const shapes = map.shapes.map((shape) => ({
    ...shape,
    rings: shape.rings.map((ring) => ring.map(([x, y]): Point => [x * across, y * down])),
  }));
  return { map: { ...map, width: map.width * across, height: map.height * down, shapes }, notes };
}
