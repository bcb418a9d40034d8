import { batchesOf } from "../../../src/core/plan/batches.ts";
import { partsOf } from "../../../src/core/window/window.ts";
import { gaugeSheets } from "../../../src/output/drawing/sheets/gauge-sheet.ts";
import { stripSheets } from "../../../src/output/drawing/sheets/strip-sheets.ts";
import { templateSheets } from "../../../src/output/drawing/sheets/template-sheets.ts";
import { galleryKit, type KitName } from "../kits.ts";
import { onSheet, type Scene } from "../scene.ts";

/** Each kit's gauges; the strips of one with deep levels go on to further sheets. */
const GAUGES: readonly (readonly [KitName, readonly number[]])[] = [
  ["gull", [1]],
  ["boat", [1]],
  ["moon", [1]],
  ["tide", [1]],
  ["small", [1]],
  ["tall", [1, 2, 3]],
  ["plate", [1]],
];

/** Some of each kit's sheets, from 1; a tall book's strips come in parts. */
const STRIPS: readonly (readonly [KitName, readonly number[]])[] = [
  ["gull", [1]],
  ["moon", [5]],
  ["tide", [2]],
  ["plate", [2]],
  ["small", [1, 2]],
  ["tall", [4, 11]],
];
const TEMPLATES: readonly (readonly [KitName, readonly number[]])[] = [
  ["moon", [1, 2, 3]],
  ["plate", [1, 2]],
  ["tall-window", [1, 2, 3, 4, 5]],
];

/** True-scale sheets of the packet. */
export const sheets: readonly Scene[] = [
  ...GAUGES.flatMap(([kit, numbers]) => numbers.map((number) => gauge(kit, number))),
  ...STRIPS.flatMap(([kit, numbers]) => numbers.map((number) => strips(kit, number))),
  ...TEMPLATES.flatMap(([kit, numbers]) => numbers.map((number) => templates(kit, number))),
];

function gauge(kit: KitName, number: number): Scene {
  return {
    room: "sheets",
    name: `gauge-${kit}-${number}`,
    of: gaugeSheets,
    draw: () =>
      nth(
        gaugeSheets(galleryKit(kit).kit).map((drawing) => ({ drawing })),
        number,
      ),
  };
}

function strips(name: KitName, number: number): Scene {
  return {
    room: "sheets",
    name: `strips-${name}-${number}`,
    of: stripSheets,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return nth(stripSheets(kit, pattern, batchesOf(pattern, kit.fit.batch, undefined)), number);
    },
  };
}

function templates(name: KitName, number: number): Scene {
  return {
    room: "sheets",
    name: `template-${name}-${number}`,
    of: templateSheets,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return nth(templateSheets(partsOf(pattern.window), kit.units), number);
    },
  };
}

function nth(drawn: readonly { readonly drawing: string }[], number: number): string {
  const sheet = drawn[number - 1];
  if (!sheet) throw new Error(`There are ${drawn.length} sheets, none has the number ${number}.`);
  return onSheet(sheet.drawing);
}
