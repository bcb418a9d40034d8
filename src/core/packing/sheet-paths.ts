import { boxAt } from "../geometry/box.ts";
import type { SheetSize } from "../kit/kit.ts";
import { EDGE, type LaidSheet } from "./lay-out.ts";
import { measureChecks } from "./measure-check.ts";
import { type ToolPath, toolPaths } from "./operation.ts";

/** Every line of a laid sheet, mm from its upper left corner: something to measure, then the parts. */
export function sheetPaths({ places }: Pick<LaidSheet, "places">, size: SheetSize): ToolPath[] {
  const parts = places.flatMap(({ part, onSheet }) => toolPaths(part, onSheet));
  const boxes = places.map((place) => boxAt(place.x, place.y, place));
  return [...measureChecks(size, EDGE, boxes, parts), ...parts];
}
