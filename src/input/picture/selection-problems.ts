import leven from "leven";
import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import type { FieldPath, Problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";
import { foundIn, foundText } from "./found-in.ts";
import { type Selector, selectorText } from "./selection.ts";
import type { wantedBy } from "./shape-index.ts";

/** Names that are compared to find the one that was meant. */
const MOST_COMPARED = 2000;

/** Shapes for a level that the kit does not have. */
export function strangeLevel(at: FieldPath, name: string, levels: readonly Level[]): Problem {
  const names = levels.map((level) => level.name);
  return {
    at,
    given: say.frontShapesOfNoLevel({ level: shortValue(name) }),
    allowed: say.frontTheLevels({ levels: names.join(", ") }),
    remedy: remedyFor(nearest(name, names)) ?? say.frontAddLevel(),
  };
}

/** A selector that means the same as another. */
export function twiceSelected(at: FieldPath, selector: Selector): Problem {
  const id = shortValue(selectorText(selector));
  return { at, given: say.frontIdTwice({ id }), allowed: say.frontIdOnce(), remedy: say.frontRemoveId() };
}

/** What is wrong with a selector that picks nothing; an id may be that of something that is not painted. */
export function strangeSelector(
  at: FieldPath,
  selector: Selector,
  wanted: ReturnType<typeof wantedBy>,
  picture: SvgPicture,
): Problem | undefined {
  const given = say.frontId({ id: shortValue(selectorText(selector)) });
  if (wanted === undefined) {
    return { at, given, allowed: say.selectColour(), remedy: say.selectWriteColour() };
  }
  const { kind, value } = wanted;
  if (kind === "id") {
    if (picture.ids.has(value)) return undefined;
    const painted = [...new Set(picture.shapes.flatMap(({ called }) => called.flatMap(({ id }) => id ?? [])))];
    const ids = nameList(painted.map((id) => `#${id}`));
    const allowed = ids === "" ? say.frontPictureNoIds() : say.frontPictureIds({ ids });
    const meant = nearest(value, painted);
    return { at, given, allowed, remedy: remedyFor(meant && `#${meant}`) ?? say.frontGiveId() };
  }
  const values = valuesOf(kind, picture);
  if (values.has(value)) return undefined;
  const offers = foundText(foundIn(picture));
  return {
    at,
    given,
    allowed: offers === "" ? say.selectNothing() : say.selectOffers({ found: offers }),
    remedy: remedyFor(meantBy(kind, value, values, picture)) ?? say.selectCorrect(),
  };
}

/** What the painted shapes of a picture have of a kind. */
function valuesOf(kind: "name" | "class" | "fill" | "stroke", { shapes }: SvgPicture): Set<string> {
  return new Set(
    shapes.flatMap(({ called, paint, colour }) => {
      if (kind === "name") return called.flatMap(({ names }) => names);
      if (kind === "class") return called.flatMap(({ classes }) => classes);
      return paint === kind && colour !== undefined ? [colour] : [];
    }),
  );
}

/** What to write in place of a selector; a name without its sign may be that of an id. */
function meantBy(
  kind: "name" | "class" | "fill" | "stroke",
  value: string,
  values: ReadonlySet<string>,
  picture: SvgPicture,
): string | undefined {
  if (kind === "fill" || kind === "stroke") return undefined;
  if (kind === "name" && picture.ids.has(value)) return `#${value}`;
  const meant = nearest(value, [...values]);
  return meant === undefined ? undefined : `${kind === "class" ? "." : ""}${meant}`;
}

/** The name that was probably meant, by edit distance without capitals; undefined where none is near. */
function nearest(name: string, names: readonly string[]): string | undefined {
  const plain = name.slice(0, 100).toLowerCase();
  let best: string | undefined;
  let least = Math.max(2, plain.length / 3) + 1;
  for (const other of names.slice(0, MOST_COMPARED)) {
    const distance = leven(plain, other.slice(0, 100).toLowerCase());
    if (distance >= least || distance >= plain.length) continue;
    best = other;
    least = distance;
  }
  return best;
}

function remedyFor(meant: string | undefined): string | undefined {
  return meant === undefined ? undefined : say.selectDidYouMean({ meant: shortValue(meant) });
}
