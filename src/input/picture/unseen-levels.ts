import { type Box, boxOf } from "../../core/geometry/box.ts";
import type { Level } from "../../core/kit/kit.ts";
import { levelExtents } from "../../core/picture/level-extents.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, type Problem, stopAt } from "../files/problem.ts";
import type { PictureNote } from "../svg/svg-picture.ts";
import type { DrawnShape } from "./drawn-svg.ts";
import { reachesOver } from "./reaches-over.ts";
import { shownShapes } from "./shown-shapes.ts";

/** So many shapes that cover a level, or are lost in it, are named. */
const NAMED = 3;

/** A picture whose shapes still know where they come from. */
export interface NamedMap extends LevelMap {
  readonly shapes: readonly DrawnShape[];
}

/**
 * Stops at levels of which the picture shows nothing, with what hides them. The background is what nothing else covers, so it
 * may be hidden.
 *
 * @param placeOf where the front matter states the shapes of a level, and whether it does
 * @throws ProblemError with all of them
 */
export function checkLevelsShown(
  map: NamedMap,
  levels: readonly Level[],
  placeOf: (level: Level, number: number) => { readonly at: FieldPath; readonly stated: boolean },
): void {
  const extents = levelExtents(map);
  const problems = levels.flatMap((level, i): Problem[] => {
    if (level.background || extents[i] !== undefined) return [];
    const own = map.shapes.filter((shape) => shape.level === i + 1);
    const { at, stated } = placeOf(level, i + 1);
    const list = stated ? say.frontCheckShapes() : say.frontListShapes({ level: level.name });
    const empty = { given: say.frontLevelEmpty({ level: level.name }), remedy: list };
    return [{ at, allowed: say.frontLevelsPainted(), ...(own.length === 0 ? empty : hidden(level.name, own, map)) }];
  });
  stopAt(problems);
}

/** Levels that reach out of the picture's frame, and shapes that lie wholly on their own level: what nobody will see. */
export function unseenParts(map: NamedMap, levels: readonly Level[]): PictureNote[] {
  const shown = shownShapes(map.shapes, map);
  return levels.flatMap(({ name, background }, i): PictureNote[] => {
    const own = [...map.shapes.keys()].filter((n) => map.shapes[n]!.level === i + 1);
    const over = own.map((n) => map.shapes[n]!).find((shape) => reachesOver(boxOf(shape.rings), map));
    const notes: PictureNote[] = [];
    if (over && !background)
      notes.push({ line: over.line, message: say.frontLevelOver({ level: name, shape: nameOf(over) }) });
    const lost = own.filter((n) => {
      const { lostOn } = shown[n]!;
      return lostOn !== undefined && map.shapes[lostOn]!.colour !== map.shapes[n]!.colour;
    });
    const first = map.shapes[lost[0] ?? -1];
    if (first)
      notes.push({
        line: first.line,
        message: say.selectVanish({ level: name, shapes: named(lost.map((n) => map.shapes[n]!)) }),
      });
    return notes;
  });
}

function hidden(level: string, own: readonly DrawnShape[], map: NamedMap): Pick<Problem, "given" | "remedy"> {
  const frame = { left: 0, top: 0, right: map.width, bottom: map.height };
  const inside = own.filter((shape) => meet(boxOf(shape.rings), frame));
  if (inside.length === 0) return { given: say.frontLevelOutside({ level }), remedy: say.frontMoveIn() };
  const covering = coveringOf(map, inside);
  if (covering.length === 0) return { given: say.frontLevelTiny({ level }), remedy: say.frontEnlarge() };
  return { given: say.frontLevelCovered({ level, shapes: named(covering) }), remedy: say.frontPutAfter() };
}

/** Shapes that are painted after one of these and lie where it lies, the last first. */
function coveringOf({ shapes }: NamedMap, own: readonly DrawnShape[]): DrawnShape[] {
  const boxes = own.map((shape) => ({ place: shapes.indexOf(shape), box: boxOf(shape.rings) }));
  const ours = new Set(own);
  return shapes
    .filter((shape, n) => {
      if (ours.has(shape)) return false;
      const box = boxOf(shape.rings);
      return boxes.some((one) => one.place < n && meet(box, one.box));
    })
    .toReversed();
}

/** The first few shapes by their names, and how many more there are. */
function named(shapes: readonly DrawnShape[]): string {
  const names = shapes.slice(0, NAMED).map(nameOf);
  const more = shapes.length - names.length;
  return listText(more > 0 ? [...names, say.selectMoreShapes({ more })] : names);
}

/** `<path> #wall (line 12)` */
function nameOf({ name, line }: DrawnShape): string {
  return say.selectShapeAt({ shape: name, line });
}

function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
