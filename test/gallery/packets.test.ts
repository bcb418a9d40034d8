import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { PatternedKit } from "../../src/core/pattern/patterned-kit.ts";
import { viewKit } from "../../src/output/views/kit-view.ts";
import { withPacket } from "../../src/output/views/packet-view.ts";
import { pocketView, windowView } from "../../src/output/views/window-view.ts";
import { readKit } from "../input/kit/kit-folders.ts";
import { WAYS, writeExtremes } from "../site/extreme.ts";
import { makeProject } from "../site/project.ts";
import { faultsOf } from "./faults.ts";
import { galleryKit, KIT_NAMES } from "./kits.ts";
import { DIAGRAM, figureIn, onSheet } from "./scene.ts";
import { seen } from "./seen.ts";

/** Every diagram and every sheet that a kit's packet has, each with where it stands; goldens show some of them. */
function drawingsOf(made: PatternedKit): (readonly [place: string, svg: string])[] {
  const { steps, legend, measuring, reading, kit, pattern, packet } = withPacket(viewKit(made, []));
  const [pocket, window] = [pocketView(kit, pattern), windowView(kit, pattern)];
  const figures = [
    ...steps.map(({ title, figure }) => [title, figure] as const),
    ...reading.map((figure, i) => [`reading ${i + 1}`, figure] as const),
    ["legend", legend] as const,
    ["measuring", measuring] as const,
    ["pocket from above", pocket?.plan] as const,
    ["pocket from the front", pocket?.elevation] as const,
    ["window", window?.layers] as const,
  ];
  const sheets = [
    ...packet.gauges.map((drawing, i) => [`gauge ${i + 1}`, onSheet(drawing)] as const),
    ...packet.strips.map(({ drawing }, i) => [`strips ${i + 1}`, onSheet(drawing)] as const),
    ...packet.templates.map(({ drawing }, i) => [`templates ${i + 1}`, onSheet(drawing)] as const),
  ];
  return [
    ...figures.flatMap(([place, figure]) => (figure ? [[place, figureIn(DIAGRAM, figure)] as const] : [])),
    ...sheets,
  ];
}

function faultsIn(made: PatternedKit): string[] {
  const drawings = drawingsOf(made);
  expect(drawings.length).toBeGreaterThan(9);
  return drawings.flatMap(([place, svg]) => faultsOf(seen(svg)).map((fault) => `${place}: ${fault}`));
}

describe("every diagram and every sheet of a packet", () => {
  it.each(KIT_NAMES)("of %s has large letters, and its words upon no words and no line", (name) => {
    expect(faultsIn(galleryKit(name))).toEqual([]);
  });

  it.each(WAYS)("so also where every text is as long as it may be, way %s", (way) => {
    const project = makeProject({ kits: [] });
    try {
      writeExtremes(project);
      expect(faultsIn(readKit(join(project.folder, "content/kits", `extreme-${way}`), project.folder))).toEqual([]);
    } finally {
      project.remove();
    }
  });
});
