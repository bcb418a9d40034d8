import type { Level } from "../../core/kit/kit.ts";
import type { LevelMap, LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type Problem, ProblemError } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import type { PaintedShape, SvgPicture } from "../svg/svg-picture.ts";

/** Which ids belong to which level, as the front matter states it. */
type Named = Readonly<Record<string, readonly string[]>>;

/** Of more shapes without a level than these, the first are enough to see what is amiss. */
const MOST_TOLD = 10;

/**
 * Gives every painted shape its level: the one whose list names the shape, or else the nearest group around it.
 * @throws ProblemError with all lists, or else all shapes, or else all levels that are wrong: each kind follows from the one before.
 */
export function assignLevels(picture: SvgPicture, named: Named, levels: readonly Level[], file: string): LevelMap {
  stopAt(wrongLists(picture, named, levels));
  const levelOf = levelsById(named, levels);
  const levelOfShape = (shape: PaintedShape): number | undefined =>
    levelOf.get(shape.ids.find((id) => levelOf.has(id)) ?? "");
  const lost = picture.shapes.filter((shape) => levelOfShape(shape) === undefined);
  stopAt(lost.slice(0, MOST_TOLD).map((shape) => withoutLevel(shape, file)));
  const shapes = picture.shapes.map((shape): LevelShape => {
    return { level: levelOfShape(shape)!, rule: shape.rule, rings: shape.rings };
  });
  stopAt(emptyLevels(shapes, named, levels));
  const { width, height } = picture;
  return { width, height, background: levels.findIndex((level) => level.background) + 1, shapes };
}

function stopAt(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new ProblemError(problems);
}

function levelsById(named: Named, levels: readonly Level[]): Map<string, number> {
  const numbers = Object.entries(named).flatMap(([name, ids]) => {
    const level = levels.findIndex((one) => one.name === name) + 1;
    return ids.map((id) => [id.slice(1), level] as const);
  });
  return new Map(numbers);
}

function wrongLists(picture: SvgPicture, named: Named, levels: readonly Level[]): Problem[] {
  const names = levels.map((level) => level.name);
  const seen = new Set<string>();
  return Object.entries(named).flatMap(([name, ids]) => {
    if (!names.includes(name)) return [strangeLevel(name, names)];
    return ids.flatMap((id, i): Problem[] => {
      const at = ["picture", "levels", name, i];
      if (!picture.ids.has(id.slice(1))) return [{ at, ...strangeId(id, picture) }];
      const again = seen.has(id);
      seen.add(id);
      const once = { given: say.frontIdTwice({ id }), allowed: say.frontIdOnce(), remedy: say.frontRemoveId() };
      return again ? [{ at, ...once }] : [];
    });
  });
}

function strangeLevel(name: string, names: readonly string[]): Problem {
  return {
    at: ["picture", "levels", name],
    given: say.frontShapesOfNoLevel({ level: name }),
    allowed: say.frontTheLevels({ levels: names.join(", ") }),
    remedy: say.frontAddLevel(),
  };
}

function strangeId(id: string, picture: SvgPicture): Omit<Problem, "at"> {
  const ids = nameList([...picture.ids.keys()].map((one) => `#${one}`));
  return {
    given: say.frontId({ id: shortValue(id) }),
    allowed: ids === "" ? say.frontPictureNoIds() : say.frontPictureIds({ ids }),
    remedy: say.frontGiveId(),
  };
}

function withoutLevel({ element, ids, line }: PaintedShape, file: string): Problem {
  return {
    at: { file, line, field: "picture.levels" },
    given:
      ids.length === 0
        ? say.frontShapeUnnamed({ element })
        : say.frontShapeNoLevel({ element, ids: nameList(ids.map((id) => `#${id}`)) }),
    allowed: say.frontShapesBelong(),
    remedy: say.frontNameShape(),
  };
}

function emptyLevels(shapes: readonly LevelShape[], named: Named, levels: readonly Level[]): Problem[] {
  return levels.flatMap((level, i): Problem[] => {
    if (level.background || shapes.some((shape) => shape.level === i + 1)) return [];
    const listed = named[level.name] !== undefined;
    return [
      {
        at: listed ? ["picture", "levels", level.name] : ["levels", i],
        given: say.frontLevelEmpty({ level: level.name }),
        allowed: say.frontLevelsPainted(),
        remedy: listed ? say.frontCheckShapes() : say.frontListShapes({ level: level.name }),
      },
    ];
  });
}
