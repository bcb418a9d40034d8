import type { Marked } from "../../core/beginning/picture-wish.ts";
import { once } from "../../core/lazily.ts";
import { shownShapes } from "../../input/picture/shown-shapes.ts";
import type { PaintedShape, SvgPicture } from "../../input/svg/svg-picture.ts";
import { colourName, distinctNames } from "./colour-name.ts";
import { type MarkedLevels, markedLevels } from "./marked-levels.ts";

/** A way to tell a drawing's shapes apart. */
export interface Sorting {
  readonly by: "names" | "colours";
  /** The level of each as it is usual, front to back; what is painted last stands in front. */
  readonly marks: readonly Marked[];
  /** Of each mark, the share of the canvas that its shapes show, 0…1. */
  readonly shares: readonly number[];
  /** Of each shape, its mark by number from 0. */
  readonly markOf: readonly number[];
}

/** So many levels of its own a picture has at first, with the ground another one. */
const MOST_LEVELS = 5;

/** More kinds of shapes than these nobody sorts by hand. */
const MOST_MARKS = 40;

/**
 * The levels that a drawing has by itself: by the names of its layers or objects, the outermost that tell several apart, else by
 * its colours. A drawing of one kind of shape is one level, called `only`.
 */
export function svgLevels(picture: SvgPicture, only: string): MarkedLevels {
  const sorting = sortingsOf(picture).find(({ marks }) => marks.length <= MOST_LEVELS);
  return sorting ? markedLevels(sorting.marks) : { fields: { level: only }, names: [only], grounded: false };
}

/** Every way in which a drawing's shapes can be told apart, the one that is usual first. */
export function sortingsOf(picture: SvgPicture): Sorting[] {
  const { shapes } = picture;
  const shown = once(() =>
    shownShapes(
      shapes.map(({ rule, rings }, i) => ({ rule, rings, level: i + 1 })),
      picture,
    ).map(({ share }) => share),
  );
  const ways = [
    ...namings(shapes).map((of) => ({ by: "names" as const, of })),
    { by: "colours" as const, of: shapes.map(colourOf) },
  ];
  const sortings = ways.flatMap(({ by, of }) => sortedBy(by, of, shown) ?? []);
  const usual = sortings.filter(({ marks }) => marks.length <= MOST_LEVELS);
  return [...usual, ...sortings.filter((one) => !usual.includes(one))];
}

/** Shapes by their marks; undefined where these tell nothing apart, or too much. */
function sortedBy(
  by: Sorting["by"],
  of: readonly (ShapeMark | undefined)[],
  shown: () => readonly number[],
): Sorting | undefined {
  const keys = [...new Set(of.map((mark) => mark?.key))];
  if (keys.includes(undefined) || keys.length < 2 || keys.length > MOST_MARKS) return undefined;
  const front = of.toReversed().filter((mark, i, all) => all.findIndex((one) => one?.key === mark?.key) === i);
  const names = distinctNames(front.map((mark) => mark!.name));
  const markOf = of.map((mark) => front.findIndex((one) => one!.key === mark!.key));
  const shares = front.map((_, k) => shown().reduce((sum, share, i) => sum + (markOf[i] === k ? share : 0), 0));
  const isGrounded = shown().reduce((sum, share) => sum + share, 0) >= WHOLE;
  const marks = front.map((mark, i): Marked => {
    const isGround = isGrounded && i === front.length - 1;
    return { name: names[i]!, selector: mark!.selector, level: isGround ? 0 : levelOf(i, front.length) };
  });
  return { by, marks, shares, markOf };
}

/** A level for each, or so many for all of them. */
function levelOf(i: number, count: number): number {
  return count <= MOST_LEVELS ? i + 1 : 1 + Math.floor((i * MOST_LEVELS) / count);
}

/** So much of a canvas is all of it, as a share; edges may be a little off. */
const WHOLE = 0.995;

/** What tells a shape from others by its `key`, and what the level of such shapes is called. */
interface ShapeMark extends Pick<Marked, "name" | "selector"> {
  readonly key: string;
}

/** The names of all shapes, of what is outermost first. */
function namings(shapes: readonly PaintedShape[]): (ShapeMark | undefined)[][] {
  const named = shapes.map(({ called }) => called.flatMap(({ names }) => names.slice(0, 1)).toReversed());
  const depth = named.reduce((most, names) => Math.max(most, names.length), 0);
  return Array.from({ length: depth }, (_, i) =>
    named.map((names): ShapeMark | undefined => (names[i] === undefined ? undefined : nameMark(names[i]))),
  );
}

/** A name that begins as an id or a class does cannot be told from one. */
function nameMark(name: string): ShapeMark | undefined {
  return /^[#.]/.test(name) || name.length > 60 ? undefined : { key: name, name, selector: name };
}

function colourOf({ paint, colour }: PaintedShape): ShapeMark | undefined {
  if (colour === undefined) return undefined;
  const selector = paint === "fill" ? { fill: colour } : { stroke: colour };
  return { key: `${paint} ${colour}`, name: colourName(colour), selector };
}
