import { boxOf } from "../../core/geometry/box.ts";
import type { Level } from "../../core/kit/kit.ts";
import { levelExtents } from "../../core/picture/level-extents.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import type { Problem } from "../files/problem.ts";
import { reachesOver } from "../picture/reaches-over.ts";
import type { ReadLayer } from "./read-layers.ts";

/** A problem for each level of which the picture shows nothing; the background may be hidden. */
export function hiddenLevels(map: LevelMap, levels: readonly Level[]): Problem[] {
  const extents = levelExtents(map);
  return levels.flatMap((level, i): Problem[] => {
    if (level.background || extents[i] !== undefined) return [];
    const drawn = map.shapes.some((shape) => shape.level === i + 1);
    return [
      {
        at: ["levels", i],
        given: drawn ? say.layerLevelHidden({ level: level.name }) : say.layerLevelUndrawn({ level: level.name }),
        allowed: say.layerLevelsShow(),
        remedy: drawn ? say.layerBringForward() : say.layerDrawLevel({ level: level.name }),
      },
    ];
  });
}

/** Notes on layers that show nowhere, and on those that reach out of the picture. */
export function hiddenLayers(layers: readonly ReadLayer[], { width, height }: LevelMap): string[] {
  const shapes = layers
    .toReversed()
    .flatMap((layer) => layer.shapes.map((shape) => ({ ...shape, level: layers.indexOf(layer) + 1 })));
  const extents = levelExtents({ width, height, background: layers.length + 1, shapes });
  return layers.flatMap((layer, i): string[] => {
    const number = i + 1;
    if (extents[i] === undefined) return [say.layerHidden({ layer: number })];
    return reachesOver(boxOf(layer.shapes.flatMap(({ rings }) => rings)), { width, height })
      ? [say.layerOver({ layer: number })]
      : [];
  });
}
