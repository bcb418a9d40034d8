import type { Selector } from "../../input/picture/selection.ts";
import type { PaintedShape, SvgPicture } from "../../input/svg/svg-picture.ts";

/** Which shapes of a drawing belong to which level, as front matter states it. */
export interface SvgLevels {
  readonly fields: Readonly<Record<string, unknown>>;
  /** Names of the levels, front to back. */
  readonly names: readonly string[];
}

/** So many levels of its own a picture has at most, with the ground another one. */
const MOST_LEVELS = 5;

/**
 * The levels that a drawing has by itself: by the names of its layers or objects, the outermost that tell several apart, else by
 * its colours. What is painted last stands in front. A drawing of one kind of shape is one level, called `only`.
 */
export function svgLevels({ shapes }: SvgPicture, only: string): SvgLevels {
  const ways = [...namings(shapes), shapes.map(colourOf)];
  const way = ways.find(tellsApart);
  if (!way) return { fields: { level: only }, names: [only] };
  const marks = way.toReversed().filter((mark, i, all) => all.findIndex((one) => one?.name === mark?.name) === i);
  const levels = marks.map((mark) => [mark!.name, mark!.selector] as const);
  return { fields: { levels: Object.fromEntries(levels) }, names: levels.map(([name]) => name) };
}

/** What tells a shape from others. */
interface Mark {
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
  return /^[#.]/.test(name) || name.length > 60 ? undefined : { name, selector: name };
}

function colourOf({ paint, colour }: PaintedShape): Mark | undefined {
  if (colour === undefined) return undefined;
  return { name: `${paint} ${colour.slice(1)}`, selector: paint === "fill" ? { fill: colour } : { stroke: colour } };
}

function tellsApart(marks: readonly (Mark | undefined)[]): boolean {
  const different = new Set(marks.map((mark) => mark?.name));
  return !different.has(undefined) && different.size >= 2 && different.size <= MOST_LEVELS;
}
