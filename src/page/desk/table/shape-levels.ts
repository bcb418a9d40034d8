import { insideOf } from "../../../core/geometry/inside.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import type { DeskShape } from "../../../input/desk/protocol.ts";
import type { YamlValue } from "../../../input/desk/yaml-value.ts";
import type { FrontMatter } from "../../../input/kit/schema.ts";
import type { Selection, Selector } from "../../../input/picture/selection.ts";
import { selectorsIn, sourcesOf } from "./picture-sources.ts";

/** The uppermost shape at a place of the picture; undefined where only the ground is. */
export function shapeAt(shapes: readonly DeskShape[], x: number, y: number): DeskShape | undefined {
  return shapes.findLast((shape) => insideOf(shape.rings)({ x, y }));
}

/** Whether a shape can be given a level of its own: it is picked from a file. */
export function hasOwnLevel({ picture }: FrontMatter, shape: DeskShape): boolean {
  return shape.selectors.length > 0 && sourceOf(picture, shape.file) !== undefined;
}

/**
 * Gives a shape another level, by name. It is picked by what picks it and as little else as possible; where that stands at
 * another level, it is taken out there. Shapes that had their levels by their names in the file are written down then, all of them.
 */
export function levelEdits(
  { picture, levels }: FrontMatter,
  shapes: readonly DeskShape[],
  shape: DeskShape,
  level: string,
): Edit[] {
  const source = sourceOf(picture, shape.file);
  const [selector] = shape.selectors;
  if (!source || selector === undefined) return [];
  const names = levels.map(({ name }) => name);
  const stated = source.levels ?? namedLevels(shapes, shape.file, names);
  const before = names.map((name) => [name, selectorsIn(stated[name])] as const);
  const after = before.map(([name, list]) => {
    const others = list.filter((one) => !isSame(one, selector));
    return [name, name === level ? [...others, selector] : others] as const;
  });
  if (!source.levels) {
    const whole = Object.fromEntries(after.filter(([, list]) => list.length > 0)) as {
      readonly [key: string]: YamlValue;
    };
    const single: Edit[] = source.level === undefined ? [] : [{ at: [...source.at, "level"], value: undefined }];
    return [...single, { at: [...source.at, "levels"], value: whole }];
  }
  return after.flatMap(([name, list], i): Edit[] => {
    if (list.length === before[i]![1].length && list.every((one, k) => isSame(one, before[i]![1][k]!))) return [];
    return [
      { at: [...source.at, "levels", name], value: list.length > 0 ? (list as readonly YamlValue[]) : undefined },
    ];
  });
}

interface Source {
  readonly at: readonly (string | number)[];
  readonly level: string | undefined;
  readonly levels: Readonly<Record<string, Selection>> | undefined;
}

/** The keys that state a file's levels: the picture's own, or those of the layer that draws it. */
function sourceOf(picture: FrontMatter["picture"], file: string): Source | undefined {
  const found = sourcesOf(picture).find((one) => one.file === file);
  if (!found || Array.isArray(found.levels)) return undefined;
  return { at: found.at, level: found.level, levels: found.levels as Source["levels"] };
}

function namedLevels(
  shapes: readonly DeskShape[],
  file: string,
  names: readonly string[],
): Readonly<Record<string, Selection>> {
  const own = shapes.filter((one) => one.file === file && one.level !== undefined && one.selectors.length > 0);
  return Object.fromEntries(
    names.map((name, k) => [name, own.filter(({ level }) => level === k + 1).map(({ selectors }) => selectors[0]!)]),
  );
}

function isSame(a: Selector, b: Selector): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
