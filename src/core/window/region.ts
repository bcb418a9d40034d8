import { type Area, areaOfRings, intersect, outlinesOf, rectangle, sizeOf, subtract, unite } from "../geometry/area.ts";
import type { Ring } from "../geometry/point.ts";
import { oncePer } from "../kept-with.ts";
import { onceEach } from "../lazily.ts";
import { type PictureBox, tidyBox } from "../light/region-rows.ts";
import type { LevelMap, LevelShape } from "../picture/level-map.ts";

/** A level's outline and the hole in it. */
export interface Shown {
  readonly outline: Area;
  readonly hole: Area;
}

/** Pictures are cut with their longer side about so long, mm: what the polygon library rounds is then no more on the front. */
const CUT_AT = 256;

/** What shows of a picture's levels, as it is cut. */
const cutLevels = oncePer((map: LevelMap) => {
  const scale = 2 ** Math.floor(Math.log2(CUT_AT / Math.max(map.width, map.height)));
  const box = { head: 0, height: map.height * scale, width: map.width * scale };
  return { box, shownOf: onceEach((level: number) => outlineAndHole(visibleRegion(map, level, box))) };
});

/** A level's greatest outline and its hole where the picture lies on the front; a picture is cut once, wherever it lies. */
export function shownOnFront(map: LevelMap, level: number, front: PictureBox): Shown | undefined {
  const { box: cut, shownOf } = cutLevels(map);
  const box = tidyBox(front);
  const place = (area: Area): Area =>
    area.map((ring) =>
      ring.map(([x, y]) => [(x / cut.width) * box.width, box.head + (y / cut.height) * box.height] as const),
    );
  const shown = shownOf(level);
  return shown && { outline: place(shown.outline), hole: place(shown.hole) };
}

/** The part of a picture that shows a level, in mm of the front: x from the picture's left edge, y from the head. */
export function visibleRegion(map: LevelMap, level: number, box: PictureBox): Area {
  const place = (ring: Ring): Ring =>
    ring.map(([x, y]) => [(x / map.width) * box.width, box.head + (y / map.height) * box.height] as const);
  const frame: Area = [rectangle(0, box.head, box.width, box.head + box.height)];
  const start: Area = map.background === level ? frame : [];
  const painted = layersOf(map, level).reduce<Area>((region, { own, shapes }) => {
    if (region.length === 0 && !own) return region;
    const areas = shapes.map(({ rings, rule }) => areaOfRings(rings.map(place), rule));
    return own ? unite(region, areas.flat()) : subtract(region, areas.flat());
  }, start);
  return intersect(painted, frame);
}

/** Shapes that follow each other and all show the level, or all cover it: they are cut in one go. */
interface Layer {
  readonly own: boolean;
  readonly shapes: LevelShape[];
}

/** A picture's shapes in layers, from the lowest to the uppermost. */
export function layersOf({ shapes }: Pick<LevelMap, "shapes">, level: number): Layer[] {
  const layers: Layer[] = [];
  for (const shape of shapes) {
    const own = shape.level === level;
    const last = layers.at(-1);
    if (last?.own === own) last.shapes.push(shape);
    else layers.push({ own, shapes: [shape] });
  }
  return layers;
}

/** A region's greatest outer outline and the greatest hole in it; without one the outline itself stands for it. */
export function outlineAndHole(region: Area): Shown | undefined {
  const { outer } = outlinesOf(region);
  const outline = greatest(outer);
  if (!outline) return undefined;
  const hole = greatest(subtract([outline], region));
  return { outline: [outline], hole: [hole ?? outline] };
}

function greatest(rings: Area): Ring | undefined {
  return rings.reduce<Ring | undefined>(
    (best, ring) => (best && sizeOf([best]) >= sizeOf([ring]) ? best : ring),
    undefined,
  );
}
