import type { Part } from "../../../src/core/window/part.ts";
import type { BookWindow } from "../../../src/core/window/window.ts";
import { motifsInPlace } from "../../../src/output/drawing/diagrams/motifs-in-place.ts";
import { pocketElevation } from "../../../src/output/drawing/diagrams/pocket-elevation.ts";
import { pocketPlan } from "../../../src/output/drawing/diagrams/pocket-plan.ts";
import { windowLayers } from "../../../src/output/drawing/diagrams/window-layers.ts";
import { litWindow } from "../../../src/output/drawing/front/lit-window.ts";
import { partFigure } from "../../../src/output/drawing/parts-figure.ts";
import { galleryKit, type KitName, LIT, WINDOWED } from "../kits.ts";
import { DIAGRAM, figureIn, PAIR, PART, type Scene, stated } from "../scene.ts";

type Choice = readonly [name: string, part: (window: BookWindow) => Part];

const PARTS: readonly Choice[] = [
  ["base-frame", ({ frame }) => frame],
  ["glazing", ({ glazing }) => glazing],
  ["door", ({ door }) => door],
  ["tab", ({ tab }) => tab],
  ["guide", ({ guide }) => guide],
  ["holder", ({ holder }) => holder],
];

/** The fixtures' moon has their three motifs. */
const MOTIFS: readonly Choice[] = [0, 1, 2].map((i) => [`motif-${i + 1}`, (window) => window.motifs[i]!]);

/** Kits whose window has motifs. */
const DECORATED: readonly KitName[] = ["moon", "six"];

/** The window's parts and layers, and the light's pocket. */
export const window: readonly Scene[] = [
  ...[...PARTS, ...MOTIFS].map((choice) => part("moon", choice)),
  ...PARTS.map((choice) => part("plate", choice)),
  ...WINDOWED.map(layers),
  ...DECORATED.map(inPlace),
  ...[...DECORATED, "plate" as const].map(lit),
  ...LIT.flatMap((kit) => [pocket(pocketPlan, "pocket-plan", kit), pocket(pocketElevation, "pocket-elevation", kit)]),
];

function part(name: KitName, [partName, choose]: Choice): Scene {
  return {
    room: "window",
    name: `${partName}-${name}`,
    of: partFigure,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return figureIn(PART, partFigure(choose(pattern.window!), pattern.window!, kit.units));
    },
  };
}

function layers(name: KitName): Scene {
  return {
    room: "window",
    name: `layers-${name}`,
    of: windowLayers,
    draw: () => figureIn(DIAGRAM, windowLayers(galleryKit(name).pattern.window!)),
  };
}

function inPlace(name: KitName): Scene {
  return {
    room: "window",
    name: `motifs-in-place-${name}`,
    of: motifsInPlace,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return figureIn(DIAGRAM, stated(motifsInPlace(kit, pattern)));
    },
  };
}

function lit(name: KitName): Scene {
  return {
    room: "window",
    name: `lit-${name}`,
    of: litWindow,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return figureIn(PAIR, stated(litWindow(kit, pattern)));
    },
  };
}

function pocket(of: typeof pocketPlan, figure: string, name: KitName): Scene {
  return {
    room: "window",
    name: `${figure}-${name}`,
    of,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return figureIn(DIAGRAM, of(pattern, pattern.pocket!, kit.units));
    },
  };
}
