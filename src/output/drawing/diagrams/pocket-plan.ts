import type { Pocket } from "../../../core/light/light.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { tag } from "../svg-text.ts";
import { fanFromAbove } from "./fan-view.ts";
import { diagram, GLOW, POSITION } from "./ink.ts";
import { penFor } from "./pen.ts";

/** The pocket from above: leaves as it stands at the middle of the light, notched ones cut back, and the light in its clearance. */
export function pocketPlan(pattern: Pattern, { centre, light, floor, notches }: Pocket, units: UnitSystem): Figure {
  const size = (mm: number): string => formatSize(mm, units);
  const height = floor - light.height / 2;
  const scale = Math.min(68 / pattern.fit.boardWidth, 44 / pattern.book.leafWidth);
  const view = fanFromAbove(pattern, [40, 2], scale, height, notches);
  const [cx, cy, radius] = [40 + centre.x * scale, 2 + centre.z * scale, (light.diameter / 2) * scale];
  const front = Math.max(cy + radius, ...view.boards.map(([, y]) => y)) + 7;
  const pen = penFor("ltr");
  const diameter = size(light.diameter);
  const label = say.drawPocketPlan({
    height: size(height),
    notches: notches.length,
    diameter,
    setback: size(light.setback),
    clearance: size(light.clearance),
  });
  return diagram(front + 10, label, [
    view.svg,
    tag("circle", { cx, cy, r: radius + light.clearance * scale, ...POSITION }),
    pen.dot([cx, cy], radius, GLOW),
    pen.across(cx - radius, cx + radius, front, say.drawPocketDiameter({ diameter }), { from: cy }),
    pen.arrow(cx, front + 9.4, cx, front + 3),
    pen.words([cx + 2, front + 8.4], say.drawLookFromHere()),
  ]);
}
