import { mapPoint } from "../../core/geometry/affine.ts";
import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { Level } from "../../core/kit/kit.ts";
import { KitError } from "../files/message.ts";
import { isRasterName } from "../files/photo-kinds.ts";
import { type FieldPath, ProblemError } from "../files/problem.ts";
import { shapeName } from "../picture/assign-levels.ts";
import { levelsByName } from "../picture/levels-by-name.ts";
import { type Selection, type Selector, selectorsOf } from "../picture/selection.ts";
import { picksOf, ShapeIndex, wantedBy } from "../picture/shape-index.ts";
import type { PaintedShape, SvgPicture } from "../svg/svg-picture.ts";
import { drawFile, type PictureFiles } from "./draw-file.ts";
import { inBox } from "./kit-picture.ts";
import type { PickableShape } from "./pickable-shape.ts";
import { FILLING, type Place, placement } from "./place.ts";
import type { PictureMatter, SourceMatter } from "./schema.ts";

/** A source of a picture that draws a file, and where that stands. */
interface FileSource {
  readonly fields: SourceMatter & Levelled;
  readonly file: string;
  readonly at: FieldPath;
  readonly place: (drawn: Size) => (rings: readonly Ring[]) => readonly Ring[];
}

interface Levelled {
  readonly level?: string | undefined;
  readonly levels?: Readonly<Record<string, Selection>> | readonly string[] | undefined;
}

/**
 * The shapes of all drawings that a picture is made of, in painter order, with their levels, also where some have none yet.
 * What cannot be read is left out: the reader of pictures tells of that.
 */
export function pickableShapes(
  files: PictureFiles,
  matter: PictureMatter,
  levels: readonly Level[],
): readonly PickableShape[] {
  return sourcesOf(matter).flatMap((source) => {
    try {
      return shapesOf(files, source, levels);
    } catch (error) {
      if (error instanceof KitError || error instanceof ProblemError) return [];
      throw error;
    }
  });
}

/** Sources that draw an SVG file, the hindmost first, as they are painted. */
function sourcesOf(matter: PictureMatter): FileSource[] {
  const { layers, width, height } = matter;
  if (!layers) {
    const place: FileSource["place"] = (drawn) => (rings) => wholeRings(rings, drawn, matter);
    return isSvg(matter.file) ? [{ fields: matter, file: matter.file, at: ["picture"], place }] : [];
  }
  if (width === undefined || height === undefined) return [];
  const placed = layers.flatMap((layer, i): FileSource[] => {
    const place = placedIn(layer, { width, height });
    return isSvg(layer.file) ? [{ fields: layer, file: layer.file, at: ["picture", "layers", i], place }] : [];
  });
  return placed.toReversed();
}

function isSvg(file: string | undefined): file is string {
  return file !== undefined && !isRasterName(file);
}

function wholeRings(rings: readonly Ring[], { width, height }: Size, matter: PictureMatter): readonly Ring[] {
  const map = { width, height, background: 1, shapes: [{ level: 1, rule: "nonzero", rings } as const] };
  return inBox({ map, notes: [] }, matter).map.shapes[0]!.rings;
}

function placedIn(place: Place, box: Size): FileSource["place"] {
  return (drawn) => {
    const map = placement(drawn, { ...FILLING, ...place }, box);
    return (rings) => rings.map((ring) => ring.map((point) => mapPoint(map, point)));
  };
}

/** @throws ProblemError, KitError */
function shapesOf(files: PictureFiles, source: FileSource, levels: readonly Level[]): PickableShape[] {
  const { fields, file, at, place } = source;
  const read = files.read(file, [...at, "file"]);
  const { shapes: painted } = read.painted;
  const all = drawFile(read, { level: levels[0]!.name, crop: fields.crop }, { at, levels });
  const rings = place(all);
  const picks = levelPicks(read.painted, source, levels);
  const counts = countSelectors(painted);
  return painted.map((shape, i) => ({
    file,
    selectors: [...selectorsOfShape(shape)]
      .sort(([a], [b]) => counts.get(a)! - counts.get(b)!)
      .map(([, selector]) => selector),
    name: shapeName(shape),
    line: shape.line,
    colour: shape.colour,
    rule: shape.rule,
    rings: rings(all.shapes[i]!.rings),
    level: picks[i],
  }));
}

/** The level of each shape, as far as selections that mean something say it. */
function levelPicks(
  painted: SvgPicture,
  { fields: { level, levels: stated, names }, file, at }: FileSource,
  levels: readonly Level[],
): (number | undefined)[] {
  const number = (name: string): number => levels.findIndex((one) => one.name === name) + 1;
  if (level !== undefined && names === undefined) return painted.shapes.map(() => number(level) || undefined);
  const selections: readonly (readonly [string, Selection])[] =
    level !== undefined
      ? [[level, names!]]
      : Object.entries(
          stated === undefined || Array.isArray(stated)
            ? levelsByName(painted, levels, { file, at }).selections
            : (stated as Readonly<Record<string, Selection>>),
        );
  const index = new ShapeIndex<number>();
  for (const [name, selection] of selections)
    for (const { selector } of selectorsOf(selection)) {
      const wanted = wantedBy(selector);
      if (wanted && number(name) > 0) index.add(wanted, number(name));
    }
  return picksOf(index, painted.shapes);
}

/** How many shapes each selector reaches. */
function countSelectors(shapes: readonly PaintedShape[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const shape of shapes)
    for (const key of selectorsOfShape(shape).keys()) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

/** What picks a shape, by the meaning of each: of the element itself first, then of the groups around it. */
function selectorsOfShape({ called, colour, paint }: PaintedShape): ReadonlyMap<string, Selector> {
  const found = new Map<string, Selector>();
  for (const [i, { id, names, classes }] of called.entries()) {
    if (id !== undefined) found.set(`id ${id}`, `#${id}`);
    for (const name of names) if (!/^[#.]/.test(name)) found.set(`name ${name}`, name);
    if (i === 0 && colour !== undefined)
      found.set(`${paint} ${colour}`, paint === "fill" ? { fill: colour } : { stroke: colour });
    for (const one of classes) found.set(`class ${one}`, `.${one}`);
  }
  return found;
}
