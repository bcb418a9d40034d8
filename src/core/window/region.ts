import { type Area, areaOfRings, intersect, outlinesOf, rectangle, sizeOf, subtract, unite } from "../geometry/area.ts";
import type { Ring } from "../geometry/point.ts";
import { type PictureBox, tidyBox } from "../light/region-rows.ts";
import type { LevelMap, LevelShape } from "../picture/level-map.ts";

/** A level's outline and the hole in it. */
export interface Shown {
  readonly outline: Area;
  readonly hole: Area;
}

/** Of each picture what showed of a level where it lay last. */
const lastShown = new WeakMap<LevelMap, { readonly place: string; readonly shown: Shown | undefined }>();

/** A level's greatest outline and its hole where the picture lies on the front, cut once for as long as it lies there. */
export function shownOnFront(map: LevelMap, level: number, front: PictureBox): Shown | undefined {
  const box = tidyBox(front);
  const place = JSON.stringify([level, box]);
  const last = lastShown.get(map);
  if (last?.place === place) return last.shown;
  const shown = outlineAndHole(visibleRegion(map, level, box));
  lastShown.set(map, { place, shown });
  return shown;
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
