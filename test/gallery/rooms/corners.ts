import type { Kit } from "../../../src/core/kit/kit.ts";
import type { CornerLeaf, CornerPattern } from "../../../src/core/pattern/corner-pattern.ts";
import { batchesOf } from "../../../src/core/plan/batches.ts";
import { stepFor } from "../../../src/core/units/length.ts";
import { cornerEdge } from "../../../src/output/drawing/bench/corner-edge.ts";
import type { DrawingSpace } from "../../../src/output/drawing/bench/edge-layout.ts";
import { cornerFront } from "../../../src/output/drawing/corner/corner-front.ts";
import { cornerGaugeSheets } from "../../../src/output/drawing/corner/corner-gauge.ts";
import { cornerLeaf } from "../../../src/output/drawing/corner/corner-leaf.ts";
import { cornerSteps } from "../../../src/output/drawing/corner/corner-steps.ts";
import { cornerStrips } from "../../../src/output/drawing/corner/corner-strips.ts";
import { exampleCorner } from "../../../src/output/drawing/corner/example-corner.ts";
import { cornerLegend } from "../../../src/output/drawing/diagrams/line-legend.ts";
import type { Figure } from "../../../src/output/drawing/figure.ts";
import { cornerKit } from "../corner-kits.ts";
import { DIAGRAM, figureIn, onSheet, type Scene } from "../scene.ts";

type CornerName = Parameters<typeof cornerKit>[0];

const EVERY: readonly CornerName[] = ["gull", "moon", "narrow", "rtl"];

/** The room that a leaf has at the bench on a tablet and on a small phone, CSS pixels. */
const TABLET = { width: 500, height: 640 };
const PHONE = { width: 296, height: 304 };

/** Everything that is drawn of kits whose corners are folded. */
export const corners: readonly Scene[] = [
  ...EVERY.flatMap((name) => [diagram(cornerLeaf, name), diagram(cornerSteps, name)]),
  ...EVERY.map((name): Scene => {
    const draw = (): string => {
      const { kit, pattern } = cornerKit(name);
      return cornerFront(pattern, { slug: kit.slug, title: kit.title, mood: "day" });
    };
    return { room: "corners", name: `front-${name}`, of: cornerFront, draw };
  }),
  ...(["gull", "narrow", "rtl"] as const).map((name): Scene => {
    const draw = (): string => {
      const { kit, pattern } = cornerKit(name);
      return onSheet(cornerGaugeSheets(kit, pattern)[0]!);
    };
    return { room: "corners", name: `gauge-${name}`, of: cornerGaugeSheets, draw };
  }),
  ...(["gull", "narrow"] as const).map((name): Scene => {
    const draw = (): string => {
      const { kit, pattern } = cornerKit(name);
      return onSheet(cornerStrips(kit, pattern, batchesOf(pattern, kit.fit.batch, undefined))[2]!.drawing);
    };
    return { room: "corners", name: `strips-${name}`, of: cornerStrips, draw };
  }),
  ...EVERY.map((name) => onBench("tablet", name, TABLET)),
  ...(["gull", "narrow"] as const).map((name) => onBench("phone", name, PHONE)),
  onBench("border", "gull", PHONE, ({ leaves }) => leaves[0]!),
  { room: "corners", name: "legend", of: cornerLegend, draw: () => figureIn(DIAGRAM, cornerLegend()) },
];

function diagram(of: (kit: Kit, pattern: CornerPattern) => Figure, name: CornerName): Scene {
  const draw = (): string => {
    const { kit, pattern } = cornerKit(name);
    return figureIn(DIAGRAM, of(kit, pattern));
  };
  return { room: "corners", name: `${of.name === "cornerLeaf" ? "leaf" : "steps"}-${name}`, of, draw };
}

/** A leaf at the bench. */
function onBench(
  what: string,
  name: CornerName,
  space: DrawingSpace,
  choose: (pattern: CornerPattern) => CornerLeaf = exampleCorner,
): Scene {
  const draw = (): string => {
    const { kit, pattern } = cornerKit(name);
    const style = { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) };
    return cornerEdge({ leaf: choose(pattern), spoken: "" }, pattern, style, space);
  };
  return { room: "corners", name: `bench-${what}-${name}`, of: cornerEdge, draw };
}
