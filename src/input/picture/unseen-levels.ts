import { type Box, boxOf } from "../../core/geometry/box.ts";
import type { Level } from "../../core/kit/kit.ts";
import { levelExtents } from "../../core/picture/level-extents.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import type { PaintedShape, PictureNote, SvgPicture } from "../svg/svg-picture.ts";

/** As a share of the picture's side: so far shapes may reach over its edge before it is told. */
const OVER = 0.01;

/** So many shapes that cover a level are named. */
const NAMED = 3;

/**
 * Levels of which the picture shows nothing, with what hides them, and levels that reach out of its frame: what lies there is
 * not shown. The background is what nothing else covers, so it may be hidden. Shapes of `map` are those of `picture` in order.
 */
export function unseenLevels(picture: SvgPicture, map: LevelMap, levels: readonly Level[]): PictureNote[] {
  const extents = levelExtents(map);
  return levels.flatMap((level, i): PictureNote[] => {
    const own = picture.shapes.filter((_, n) => map.shapes[n]!.level === i + 1);
    const [first] = own;
    if (level.background || !first) return [];
    if (extents[i] === undefined) return [hiddenNote(level.name, own, first, picture)];
    const over = own.find((shape) => reachesOver(boxOf(shape.rings), picture));
    return over ? [{ line: over.line, message: say.frontLevelOver({ level: level.name, shape: nameOf(over) }) }] : [];
  });
}

function hiddenNote(
  level: string,
  own: readonly PaintedShape[],
  { line }: PaintedShape,
  picture: SvgPicture,
): PictureNote {
  const frame = { left: 0, top: 0, right: picture.width, bottom: picture.height };
  const inside = own.filter((shape) => meet(boxOf(shape.rings), frame));
  if (inside.length === 0) return { line, message: say.frontLevelOutside({ level }) };
  const covering = coveringOf(picture, inside).slice(0, NAMED).map(nameOf);
  if (covering.length === 0) return { line, message: say.frontLevelTiny({ level }) };
  return { line, message: say.frontLevelCovered({ level, shapes: listText(covering) }) };
}

/** Shapes that are painted after one of these and lie where it lies, the last first. */
function coveringOf({ shapes }: SvgPicture, hidden: readonly PaintedShape[]): PaintedShape[] {
  return shapes
    .filter(
      (shape, n) =>
        !hidden.includes(shape) &&
        hidden.some((one) => shapes.indexOf(one) < n && meet(boxOf(shape.rings), boxOf(one.rings))),
    )
    .toReversed();
}

/** `<path> #wall (line 12)` */
function nameOf({ element, ids, line }: PaintedShape): string {
  return say.frontShapeAt({ element, id: ids[0] === undefined ? "" : ` #${ids[0]}`, line });
}

function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function reachesOver({ left, top, right, bottom }: Box, { width, height }: SvgPicture): boolean {
  const [across, down] = [OVER * width, OVER * height];
  return left < -across || top < -down || right > width + across || bottom > height + down;
}
