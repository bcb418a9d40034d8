import { describe, expect, it } from "vitest";
import { viewKit } from "../../src/output/views/kit-view.ts";
import { withPacket } from "../../src/output/views/packet-view.ts";
import { pocketView, windowView } from "../../src/output/views/window-view.ts";
import { faultsOf } from "./faults.ts";
import { galleryKit, KIT_NAMES, type KitName } from "./kits.ts";
import { DIAGRAM, figureIn, onSheet } from "./scene.ts";
import { seen } from "./seen.ts";

/** Every diagram and every sheet that a kit's packet has, each with where it stands; goldens show some of them. */
function drawingsOf(name: KitName): (readonly [place: string, svg: string])[] {
  const { steps, legend, measuring, reading, kit, pattern, packet } = withPacket(viewKit(galleryKit(name), []));
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

describe("every diagram and every sheet of a packet", () => {
  it.each(KIT_NAMES)("of %s has large letters, and its words upon no words and no line", (name) => {
    const drawings = drawingsOf(name);
    expect(drawings.length).toBeGreaterThan(9);
    const faults = drawings.flatMap(([place, svg]) => faultsOf(seen(svg)).map((fault) => `${place}: ${fault}`));
    expect(faults).toEqual([]);
  });
});
