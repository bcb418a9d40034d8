import type { Selector } from "../../input/picture/selection.ts";
import { shownShapes } from "../../input/picture/shown-shapes.ts";
import type { PaintedShape, SvgPicture } from "../../input/svg/svg-picture.ts";
import * as say from "../../words/messages.ts";
import { colourName } from "./colour-name.ts";

/** Which shapes of a drawing belong to which level, as front matter states it. */
export interface SvgLevels {
  readonly fields: Readonly<Record<string, unknown>>;
  /** Names of the levels, front to back. */
  readonly names: readonly string[];
  /** Whether they cover the whole canvas, so that the last one is the ground. */
  readonly grounded: boolean;
}

/** So many levels of its own a picture has at most, with the ground another one. */
const MOST_LEVELS = 5;

/**
 * The levels that a drawing has by itself: by the names of its layers or objects, the outermost that tell several apart, else by
 * its colours. What is painted last stands in front. A drawing of one kind of shape is one level, called `only`.
 */
export function svgLevels(picture: SvgPicture, only: string): SvgLevels {
  const { shapes } = picture;
  const ways = [...namings(shapes), shapes.map(colourOf)];
  const way = ways.find(tellsApart);
  if (!way) return { fields: { level: only }, names: [only], grounded: false };
  const marks = way.toReversed().filter((mark, i, all) => all.findIndex((one) => one?.key === mark?.key) === i);
  const names = distinct(marks.map((mark) => mark!.name));
  const levels = marks.map((mark, i) => [names[i]!, mark!.selector]);
  return { fields: { levels: Object.fromEntries(levels) }, names, grounded: coversCanvas(picture) };
}

/** Names of which each stands once: `blue`, `blue 2`. */
function distinct(names: readonly string[]): string[] {
  return names.map((name, i) => {
    const count = names.slice(0, i + 1).filter((one) => one === name).length;
    return count === 1 ? name : say.newColourAgain({ colour: name, count });
  });
}

/** So much of a canvas is all of it, as a share; edges may be a little off. */
const WHOLE = 0.995;

function coversCanvas(picture: SvgPicture): boolean {
  const shapes = picture.shapes.map(({ rule, rings }, i) => ({ rule, rings, level: i + 1 }));
  return shownShapes(shapes, picture).reduce((sum, { share }) => sum + share, 0) >= WHOLE;
}

/** What tells a shape from others by its `key`, and what the level of such shapes is called. */
interface Mark {
  readonly key: string;
  readonly name: string;
  readonly selector: Selector;
}

/** The names of all shapes, of what is outermost first. */
function namings(shapes: readonly PaintedShape[]): (Mark | undefined)[][] {
  const named = shapes.map(({ called }) => called.flatMap(({ names }) => names.slice(0, 1)).toReversed());
  const depth = named.reduce((most, names) => Math.max(most, names.length), 0);
  return Array.from({ length: depth }, (_, i) =>
    named.map((names): Mark | undefined => (names[i] === undefined ? undefined : nameMark(names[i]))),
  );
}

/** A name that begins as an id or a class does cannot be told from one. */
function nameMark(name: string): Mark | undefined {
  return /^[#.]/.test(name) || name.length > 60 ? undefined : { key: name, name, selector: name };
}

function colourOf({ paint, colour }: PaintedShape): Mark | undefined {
  if (colour === undefined) return undefined;
  const selector = paint === "fill" ? { fill: colour } : { stroke: colour };
  return { key: `${paint} ${colour}`, name: colourName(colour), selector };
}

function tellsApart(marks: readonly (Mark | undefined)[]): boolean {
  const different = new Set(marks.map((mark) => mark?.key));
  return !different.has(undefined) && different.size >= 2 && different.size <= MOST_LEVELS;
}
