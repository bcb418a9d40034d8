import { leafNumber } from "../../../core/book/leaf-number.ts";
import { leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Pocket } from "../../../core/light/light.ts";
import { fanOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Span } from "../../../core/spans/span.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { linePath } from "../path.ts";
import { tag } from "../svg-text.ts";
import { depthOf } from "./example-leaf.ts";
import { drawnEvery } from "./fan-view.ts";
import { type At, diagram, GLOW, LEAVES, POSITION } from "./ink.ts";
import { penFor } from "./pen.ts";

/** Room of the fan, and where the spine stands. */
const FAN = { width: 76, height: 46, top: 1 } as const;

/** The pocket from above: leaves as it stands at the middle of the light, notched ones cut back, and the light in its clearance. */
export function pocketPlan(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const { centre, light, floor, notches } = pocket;
  const size = (mm: number): string => formatSize(mm, units);
  const radius = light.diameter / 2;
  const height = floor - light.height / 2;
  const leaves = leavesAt(pattern, pocket, height);
  const tips = leaves.map(([, tip]) => tip);
  const xs = [...tips.map(([x]) => x), centre.x - radius, centre.x + radius];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const front = Math.max(...tips.map(([, z]) => z), centre.z + radius + light.clearance);
  const scale = Math.min(FAN.width / (right - left), FAN.height / front);
  const place = ([x, z]: At): At => [40 + (x - (left + right) / 2) * scale, FAN.top + z * scale];
  const [cx, cy] = place([centre.x, centre.z]);
  const [near, foot] = [radius * scale, place([0, front])[1] + 5.6];
  const pen = penFor("ltr");
  const label = say.drawPocketPlan({
    height: size(height),
    notches: notches.length,
    diameter: size(light.diameter),
    setback: size(light.setback),
    clearance: size(light.clearance),
  });
  return diagram(foot + 10, label, [
    tag("path", { d: leaves.map((leaf) => linePath(leaf.map(place))).join(""), ...LEAVES }),
    tag("circle", { cx, cy, r: (radius + light.clearance) * scale, ...POSITION }),
    pen.dot([cx, cy], near, GLOW),
    pen.across(cx - near, cx + near, foot, say.drawPocketDiameter({ diameter: size(light.diameter) }), { from: cy }),
    pen.arrow(cx, foot + 9.4, cx, foot + 3),
    pen.words([cx + 2, foot + 8.4], say.drawLookFromHere()),
  ]);
}

/** Some leaves from the spine to its tip at a height, or to its notch. */
function leavesAt(pattern: Pattern, pocket: Pocket, height: number): (readonly [At, At])[] {
  const fan = fanOf(pattern);
  const notches = new Map(pocket.notches.map((notch) => [notch.leaf, notch.depth]));
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf.spans]));
  const every = drawnEvery(fan.leaves);
  return Array.from({ length: Math.ceil(fan.leaves / every) }, (_, i) => {
    const j = i * every;
    const leaf = leafNumber(j + 1);
    const depth = Math.max(depthAt(folded.get(leaf) ?? [], height, pattern), notches.get(leaf) ?? 0);
    const [root, tip] = [leafRoot(fan, j), leafTip(fan, j, depth)];
    return [
      [root.x, root.z],
      [tip.x, tip.z],
    ];
  });
}

function depthAt(spans: readonly Span[], height: number, pattern: Pattern): number {
  const span = spans.find((one) => height >= one.from && height < one.to);
  return span ? depthOf(pattern, span.level) : 0;
}
