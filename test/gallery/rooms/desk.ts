import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { differencesOf } from "../../../src/core/makeability/differences.ts";
import { makeabilityOf } from "../../../src/core/makeability/makeability.ts";
import { type PicturePlace, placePicture } from "../../../src/core/makeability/picture-place.ts";
import { faceOf, layOutPicture } from "../../../src/core/pattern/face.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { lampOnSheet } from "../../../src/output/drawing/desk/lamp.ts";
import { leafArea, leafDrawing } from "../../../src/output/drawing/desk/leaf.ts";
import { differenceMarks } from "../../../src/output/drawing/desk/marks.ts";
import { levelRuler, uprightRuler } from "../../../src/output/drawing/desk/ruler.ts";
import {
  filledLayer,
  leafLines,
  leafMark,
  lookedAtMark,
  pickedMark,
  seenLayer,
  sheetArea,
  tracedLayer,
} from "../../../src/output/drawing/desk/sheet.ts";
import type { FigureArea } from "../../../src/output/drawing/figure.ts";
import { num } from "../../../src/output/drawing/svg-text.ts";
import { galleryKit, type KitName } from "../kits.ts";
import type { Drawer, Scene } from "../scene.ts";

/** A kit as the sheet shows it. */
interface OnSheet extends PatternedKit {
  readonly place: PicturePlace;
  readonly area: FigureArea;
}

/** One kit on the desk: what lies on its sheet, its leaf, rulers. Each layer hangs over those that it lies on. */
export const desk: readonly Scene[] = [
  layer("moon", "seen", seenLayer, ({ pattern, place, area }) => seenLayer(pattern, place, area)),
  layer("tide", "seen", seenLayer, ({ pattern, place, area }) => seenLayer(pattern, place, area)),
  layer("small-along", "seen", seenLayer, ({ pattern, place, area }) => seenLayer(pattern, place, area)),
  layer("tide", "drawn", filledLayer, ({ kit, place, area }) => filledLayer(kit, place, area)),
  layer("moon", "traced", tracedLayer, (on) => seen(on) + tracedLayer(on.kit, on.place)),
  layer("tide", "lines", leafLines, (on) => seen(on) + leafLines(on.pattern, on.place, on.area)),
  layer("moon", "leaf-chosen", leafMark, (on) => seen(on) + leafMark(leafNumber(73), on.place, on.area)),
  layer(
    "moon",
    "shape-chosen",
    pickedMark,
    (on) => seen(on) + pickedMark(on.kit.picture.shapes[0]!.rings, on.kit, on.place),
  ),
  layer("tide", "looked-at", lookedAtMark, (on) => {
    const [first] = differences(on);
    return seen(on) + lookedAtMark(first!.box, on.place.height);
  }),
  layer("moon", "lamp", lampOnSheet, (on) => seen(on) + lampOnSheet(on.pattern.pocket!)),
  ...(["tide", "tall"] as const).map((kit) =>
    layer(kit, "marks", differenceMarks, (on) => seen(on) + differenceMarks(differences(on), on.place.height)),
  ),
  leaf("moon", 73),
  leaf("tide", 60),
  leaf("small", 1),
  ruler("upright-mm", uprightRuler, { left: 0, top: 0, width: 22, height: 216 }, () =>
    uprightRuler({ units: "mm", length: 216, breadth: 22 }),
  ),
  ruler("upright-in", uprightRuler, { left: 0, top: 0, width: 22, height: 203.2 }, () =>
    uprightRuler({ units: "in", length: 203.2, breadth: 22 }),
  ),
  ruler("level-mm", levelRuler, { left: 0, top: 0, width: 140, height: 8 }, () =>
    levelRuler({ units: "mm", length: 140, breadth: 8 }, "right"),
  ),
];

function layer(kit: KitName, name: string, of: Drawer, draw: (on: OnSheet) => string): Scene {
  return {
    room: "desk",
    name: `${kit}-${name}`,
    of,
    draw: () => {
      const on = onSheet(kit);
      return drawing(on.area, draw(on));
    },
  };
}

function leaf(kit: KitName, number: number): Scene {
  return {
    room: "desk",
    name: `${kit}-leaf-${number}`,
    of: leafDrawing,
    draw: () => {
      const { kit: own, pattern } = galleryKit(kit);
      return drawing(leafArea(own), leafDrawing(own, pattern, leafNumber(number)));
    },
  };
}

function ruler(name: string, of: Drawer, area: FigureArea, draw: () => string): Scene {
  return { room: "desk", name: `ruler-${name}`, of, draw: () => drawing(area, draw()) };
}

function onSheet(name: KitName): OnSheet {
  const made = galleryKit(name);
  const layout = layOutPicture(made.kit);
  if ("failure" in layout) throw new Error(layout.failure.kind);
  const place = placePicture(made.kit, faceOf(made.kit, layout.value));
  return { ...made, place, area: sheetArea(made.kit, place) };
}

function seen({ pattern, place, area }: OnSheet): string {
  return seenLayer(pattern, place, area);
}

function differences(on: OnSheet): ReturnType<typeof differencesOf> {
  return differencesOf(makeabilityOf(on));
}

/** A millimetre of the book is a millimetre. */
function drawing({ left, top, width, height }: FigureArea, drawn: string): string {
  const box = [left, top, width, height].map((value) => num(value)).join(" ");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${num(width)}mm" height="${num(height)}mm" viewBox="${box}">${drawn}</svg>`;
}
