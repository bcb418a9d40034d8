import type { Pocket } from "../../../core/light/light.ts";
import { boxPath, levelPath } from "../path.ts";
import { tag } from "../svg-text.ts";

/** The light where it stands behind the front, and the floor below it. Units as the sheet has them, mm. */
export function lampOnSheet({ light, floor, centre }: Pocket): string {
  const left = centre.x - light.diameter / 2;
  const body = boxPath(left, floor - light.height, light.diameter, light.height);
  return (
    tag("path", {
      d: body,
      fill: "#f0b45c",
      "fill-opacity": "0.22",
      stroke: "#7a4508",
      "stroke-width": 0.5,
      "stroke-dasharray": "2 1.4",
    }) +
    tag("path", {
      d: levelPath([left - 4, floor], light.diameter + 8),
      stroke: "#7a4508",
      "stroke-width": 0.7,
      fill: "none",
    })
  );
}
