import type { Box } from "../geometry/box.ts";
import type { SheetSize } from "../kit/kit.ts";
import { EDGE, type LaidSheet, type PartPlace } from "./lay-out.ts";
import { measureChecks } from "./measure-check.ts";
import { type ToolPath, toolPaths } from "./operation.ts";

/** Every line of a laid sheet, mm from its upper left corner: something to measure, then the parts. */
export function sheetPaths({ places }: Pick<LaidSheet, "places">, size: SheetSize): ToolPath[] {
  const parts = places.flatMap(({ part, onSheet }) => toolPaths(part, onSheet));
  return [...measureChecks(size, EDGE, places.map(boxOn), parts), ...parts];
}

function boxOn({ x, y, width, height }: PartPlace): Box {
  return { left: x, top: y, right: x + width, bottom: y + height };
}
