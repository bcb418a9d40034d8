import type { Level } from "../../core/kit/kit.ts";
import type { LevelMap, LevelShape } from "../../core/picture/level-map.ts";
import { Problem } from "../../core/problem.ts";
import { KitError } from "../files/message.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";

/**
 * Gives every painted shape its level: the one whose list names the shape, or else the nearest group around it.
 * @throws Problem (front matter) or KitError (picture): a level without shapes, a shape of no level, an id that is not there.
 */
export function assignLevels(
  picture: SvgPicture,
  named: Readonly<Record<string, readonly string[]>>,
  levels: readonly Level[],
  file: string,
): LevelMap {
  const levelOf = levelsById(picture, named, levels);
  const shapes = picture.shapes.map((shape): LevelShape => {
    const id = shape.ids.find((one) => levelOf.has(one));
    if (id === undefined) {
      const name =
        shape.ids[0] === undefined
          ? `<${shape.element}> without an id`
          : `<${shape.element}> under #${shape.ids.join(", #")}`;
      throw new KitError([
        {
          file,
          line: shape.line,
          column: undefined,
          field: "picture.levels",
          given: `a shape of no level: ${name}`,
          allowed: "every painted shape belongs to a level, by its own id or a group's",
          remedy: "name its id in picture.levels, move it into a named group, or give it no fill",
        },
      ]);
    }
    return { level: levelOf.get(id)!, rule: shape.rule, rings: shape.rings };
  });
  levels.forEach((level, i) => {
    if (level.background || shapes.some((shape) => shape.level === i + 1)) return;
    const listed = named[level.name] !== undefined;
    throw new Problem(listed ? ["picture", "levels", level.name] : ["levels", i], {
      given: `level "${level.name}" has no painted shape`,
      allowed: "every level but the background has at least one",
      remedy: listed
        ? "check that the shapes under these ids are filled and visible; strokes do not count, so convert strokes to paths"
        : `list its shapes under picture.levels.${level.name}`,
    });
  });
  return {
    width: picture.width,
    height: picture.height,
    background: levels.findIndex((level) => level.background) + 1,
    shapes,
  };
}

function levelsById(
  picture: SvgPicture,
  named: Readonly<Record<string, readonly string[]>>,
  levels: readonly Level[],
): Map<string, number> {
  const levelOf = new Map<string, number>();
  for (const [name, selectors] of Object.entries(named)) {
    const level = levels.findIndex((one) => one.name === name) + 1;
    if (level === 0) {
      throw new Problem(["picture", "levels", name], {
        given: `shapes for a level "${name}"`,
        allowed: `the levels: ${levels.map((one) => one.name).join(", ")}`,
        remedy: "correct the name or add the level",
      });
    }
    selectors.forEach((selector, i) => {
      const id = selector.slice(1);
      if (!picture.ids.has(id)) {
        throw new Problem(["picture", "levels", name, i], {
          given: `"${selector}"`,
          allowed: `an id of the picture: ${[...picture.ids.keys()].map((one) => `#${one}`).join(", ") || "it has none"}`,
          remedy: "correct the id, or give the shape this id in the SVG",
        });
      }
      if (levelOf.has(id)) {
        throw new Problem(["picture", "levels", name, i], {
          given: `"${selector}" a second time`,
          allowed: "each id belongs to one level",
          remedy: "remove one of the two",
        });
      }
      levelOf.set(id, level);
    });
  }
  return levelOf;
}
