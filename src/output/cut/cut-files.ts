import type { Point } from "../../core/geometry/point.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { layOut } from "../../core/packing/lay-out.ts";
import { type CutDrawing, OPERATIONS, REFERENCE, referencePath, toolPaths } from "../../core/packing/operation.ts";
import { extentOf } from "../../core/packing/pack.ts";
import { sheetNames } from "../../core/packing/sheet-sizes.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { tidy } from "../../core/units/length.ts";
import type { Part } from "../../core/window/part.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { materialName, partName } from "../../words/parts.ts";
import { seatPartNames } from "../../words/seats.ts";
import { cutDxf } from "./dxf-file.ts";
import { pencilled, withNames } from "./pencil-names.ts";
import { cutRevision } from "./revision.ts";
import { cutSvg } from "./svg-file.ts";

export interface CutFile {
  readonly name: string;
  readonly text: string;
}

/** Free edge round a single part's drawing, mm. */
const EDGE = 5;

/**
 * Every cut file of a kit: each part by itself, and the parts laid on each of the kit's sheets. A drawing comes as SVG in
 * mm, as SVG in 1/72 in for readers that ignore units, and as DXF in mm and in inches; the name says which. Parts carry their
 * names in pencil, before them the number of the `seat` that they are for.
 */
export function cutFiles(kit: Kit, pattern: Pattern, seat?: number): CutFile[] {
  if (!pattern.window) return [];
  const parts = partsOf(pattern.window);
  const about = aboutKit(kit, pattern, pattern.window);
  const namesOf = (part: Part): string[] => (seat === undefined ? [partName(part)] : seatPartNames({ ...part, seat }));
  const single = parts.flatMap((part) => versions(part.id, partDrawing(part, kit, about, namesOf(part))));
  const names = sheetNames(kit.sheets);
  const sheets = kit.sheets.flatMap((size, i) =>
    layOut(parts, size).sheets.flatMap((sheet) =>
      versions(`sheet-${names[i]!}-${sheet.material}-${sheet.number}`, {
        title: say.cutSheetTitle({
          title: kit.title,
          material: materialName(sheet),
          size: size.name,
          number: sheet.number,
          parts: rowText(sheet.parts.map(partName)),
        }),
        about,
        width: size.width,
        height: size.height,
        paths: withNames(sheet, size, namesOf),
      }),
    ),
  );
  return [...single, ...sheets];
}

/** A drawing as SVG in mm and in 1/72 in, and as DXF in mm and inches. */
export function versions(name: string, drawing: CutDrawing): CutFile[] {
  return [
    { name: `${name}-mm.svg`, text: cutSvg(drawing, "mm") },
    { name: `${name}-72dpi.svg`, text: cutSvg(drawing, "72") },
    { name: `${name}-mm.dxf`, text: cutDxf(drawing, "mm") },
    { name: `${name}-inch.dxf`, text: cutDxf(drawing, "inch") },
  ];
}

function partDrawing(part: Part, kit: Kit, about: string, names: readonly string[]): CutDrawing {
  const box = extentOf(part);
  const width = Math.max(box.right - box.left, REFERENCE.width) + 2 * EDGE;
  const bodyHeight = box.bottom - box.top + 2 * EDGE;
  const place = ([x, y]: Point): Point => [x - box.left + EDGE, y - box.top + EDGE];
  const height = bodyHeight + REFERENCE.height + EDGE;
  const outlines = part.outlines.map((ring) => ring.map(place));
  const paths = [referencePath(EDGE, bodyHeight), ...toolPaths(part, place)];
  return {
    title: say.cutPartTitle({
      title: kit.title,
      part: partName(part),
      count: part.count,
      material: materialName(part),
    }),
    about,
    width,
    height,
    paths: pencilled(paths, { width, height }, [{ outlines, names }]),
  };
}

/** Kit, revision, settings and layers. */
function aboutKit(kit: Kit, pattern: Pattern, window: BookWindow): string {
  const { panel, lip, hinge } = window.wish;
  return say.cutAbout({
    slug: kit.slug,
    revision: cutRevision(kit, pattern, window),
    panel,
    lip: tidy(lip, 2),
    hinge,
    layers: rowText(OPERATIONS),
    width: REFERENCE.width,
    height: REFERENCE.height,
  });
}
