import { batchesOf } from "../../../src/core/plan/batches.ts";
import { frontSymbol, hereDrawing, mergedDrawing } from "../../../src/output/drawing/front/here.ts";
import { galleryKit, type KitName } from "../kits.ts";
import { figureIn, type Place, type Scene } from "../scene.ts";

/** Room beside a batch of the table, and beside the words on merged strips, mm. */
const BATCH: Place = { width: 40, height: 10 };
const MERGED: Place = { width: 60, height: 18 };

/** The front in small, as it stands beside the table. */
export const here: readonly Scene[] = [
  ...(["gull", "moon", "tide", "tall"] as const).map((kit) => batch(kit, 1)),
  batch("plate", 0),
  ...(["boat", "plate"] as const).map(merged),
  {
    room: "front",
    name: "in-small-moon",
    of: frontSymbol,
    draw: () => alone("moon", mergedDrawing(galleryKit("moon").pattern).replace(/<path[^>]*>/, ""), MERGED),
  },
];

function batch(name: KitName, index: number): Scene {
  return {
    room: "front",
    name: `here-${name}`,
    of: hereDrawing,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return alone(name, hereDrawing(pattern, batchesOf(pattern, kit.fit.batch, undefined)[index]!), BATCH);
    },
  };
}

function merged(name: KitName): Scene {
  return {
    room: "front",
    name: `merged-${name}`,
    of: mergedDrawing,
    draw: () => alone(name, mergedDrawing(galleryKit(name).pattern), MERGED),
  };
}

/** A drawing that uses the packet's symbol, with the symbol in it. */
function alone(name: KitName, svg: string, place: Place): string {
  const symbol = frontSymbol(galleryKit(name).pattern).replaceAll(/<\/?svg[^>]*>/g, "");
  return figureIn(place, { svg, label: "" }).replace(">", `><defs>${symbol}</defs>`);
}
