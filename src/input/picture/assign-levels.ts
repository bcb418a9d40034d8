import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, type Problem, ProblemError, stopAt } from "../files/problem.ts";
import { nameList } from "../files/short.ts";
import type { Calling, PaintedShape, SvgPicture } from "../svg/svg-picture.ts";
import type { Asked, Source } from "./asked.ts";
import type { DrawnShape, DrawnSvg } from "./drawn-svg.ts";
import { foundIn, foundText } from "./found-in.ts";
import { levelsByName } from "./levels-by-name.ts";
import { type Selection, selectorsOf } from "./selection.ts";
import { strangeLevel, strangeSelector, twiceSelected } from "./selection-problems.ts";
import { picksOf, ShapeIndex, wantedBy } from "./shape-index.ts";

/** Of more shapes without a level than these, the first are enough to see what is amiss. */
const MOST_TOLD = 10;

/**
 * Gives every painted shape its level: the one that picks it, or else the nearest group around it.
 *
 * @throws ProblemError with all selectors, or else all shapes that are wrong: each kind follows from the one before
 */
export function drawSvg(picture: SvgPicture, asked: Asked, levels: readonly Level[], source: Source): DrawnSvg {
  const { width, height } = picture;
  if (asked.level !== undefined) {
    const shapes = ofOneLevel(picture, asked, levels, source);
    return { width, height, shapes, notes: picture.notes };
  }
  const { selections, notes } = asked.levels
    ? { selections: asked.levels, notes: [] }
    : levelsByName(picture, levels, source);
  const index = new ShapeIndex<number>();
  const problems = Object.entries(selections).flatMap(([name, selection]) => {
    const level = levels.findIndex((one) => one.name === name) + 1;
    const at = [...source.at, "levels", name];
    if (level === 0) return [strangeLevel(at, name, levels)];
    return addSelection(index, picture, { selection, pick: level, at });
  });
  stopAt(problems);
  const picks = picksOf(index, picture.shapes);
  stopAt(withoutLevel(picture, picks, source.file));
  return { width, height, shapes: drawnShapes(picture.shapes, picks), notes: [...picture.notes, ...notes] };
}

/** What a shape is called in messages: `<path> #wave`. */
export function shapeName({ element, called }: Pick<PaintedShape, "element" | "called">): string {
  const named = called.find(({ id, names }) => id !== undefined || names.length > 0);
  const id = named?.id === undefined ? (named?.names[0] ?? "") : `#${named.id}`;
  return say.selectShape({ element, id: id === "" ? "" : ` ${nameList([id])}` });
}

function ofOneLevel(picture: SvgPicture, asked: Asked, levels: readonly Level[], source: Source): DrawnShape[] {
  const level = levels.findIndex(({ name }) => name === asked.level) + 1;
  if (level === 0) throw new ProblemError([strangeLevel([...source.at, "level"], asked.level!, levels)]);
  if (asked.names === undefined)
    return drawnShapes(
      picture.shapes,
      picture.shapes.map(() => level),
    );
  const index = new ShapeIndex<number>();
  stopAt(addSelection(index, picture, { selection: asked.names, pick: level, at: [...source.at, "names"] }));
  return drawnShapes(picture.shapes, picksOf(index, picture.shapes));
}

/** What a selection adds to an index, and what is wrong with it. */
function addSelection(
  index: ShapeIndex<number>,
  picture: SvgPicture,
  { selection, pick, at }: { readonly selection: Selection; readonly pick: number; readonly at: FieldPath },
): Problem[] {
  return selectorsOf(selection).flatMap(({ selector, place }): Problem[] => {
    const wanted = wantedBy(selector);
    const where = [...at, ...place];
    const strange = strangeSelector(where, selector, wanted, picture);
    if (strange || !wanted) return strange ? [strange] : [];
    return index.add(wanted, pick) === undefined ? [] : [twiceSelected(where, selector)];
  });
}

/** Shapes that have a pick, at their levels. */
function drawnShapes(shapes: readonly PaintedShape[], picks: readonly (number | undefined)[]): DrawnShape[] {
  return shapes.flatMap((shape, i): DrawnShape[] => {
    const level = picks[i];
    if (level === undefined) return [];
    const { rule, rings, line, colour } = shape;
    return [{ level, rule, rings, line, colour, name: shapeName(shape) }];
  });
}

function withoutLevel(picture: SvgPicture, picks: readonly (number | undefined)[], file: string): Problem[] {
  const lost = picture.shapes.filter((_, i) => picks[i] === undefined);
  const told = lost.slice(0, MOST_TOLD);
  const found = told.length > 0 ? foundText(foundIn(picture)) : "";
  return told.map(({ element, called, line, paint, colour }, i): Problem => {
    const ids = called.flatMap((calling) => knownAs(calling) ?? []);
    const shape =
      ids.length === 0 ? say.frontShapeUnnamed({ element }) : say.frontShapeNoLevel({ element, ids: nameList(ids) });
    const coloured = colour === undefined ? shape : say.selectLostColour({ shape, paint, colour });
    const more = i === told.length - 1 ? lost.length - told.length : 0;
    return {
      at: { file, line, field: "picture.levels" },
      given: more === 0 ? coloured : say.selectLostMore({ shape: coloured, more }),
      allowed: say.frontShapesBelong(),
      remedy: found === "" || i > 0 ? say.selectNameShape() : say.selectPickShape({ found }),
    };
  });
}

/** An element's name, or its id where that is all. */
function knownAs({ id, names: [name] }: Calling): string | undefined {
  if (name !== undefined && name !== id) return `"${name}"`;
  return id === undefined ? undefined : `#${id}`;
}
