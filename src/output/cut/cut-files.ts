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
import { type CutFile, filesOf, type NamedDrawing } from "./cut-forms.ts";
import { pencilled, withNames } from "./pencil-names.ts";
import { cutRevision } from "./revision.ts";
import { CUT_FORMS, writtenForms } from "./written-forms.ts";

/** A kit's drawing, and for which of the kit's papers it is laid out; 0 where it is a part by itself. */
export interface KitDrawing extends NamedDrawing {
  readonly paper: number;
}

/** Free edge round a single part's drawing, mm. */
const EDGE = 5;

/**
 * Every drawing of a kit for cutters: each part by itself, and the parts laid on each of the kit's sheets. Parts carry their
 * names in pencil, before them the number of the `seat` that they are for.
 */
export function cutDrawings(kit: Kit, pattern: Pattern, seat?: number): KitDrawing[] {
  const { window } = pattern;
  if (!window) return [];
  const parts = partsOf(window);
  const about = aboutKit(kit, pattern, window);
  const namesOf = (part: Part): string[] => (seat === undefined ? [partName(part)] : seatPartNames({ ...part, seat }));
  const single = parts.map((part) => ({
    name: part.id,
    paper: 0,
    drawing: partDrawing(part, kit, about, namesOf(part)),
  }));
  const names = sheetNames(kit.sheets);
  const sheets = kit.sheets.flatMap((size, i) =>
    layOut(parts, size).sheets.map((sheet) => ({
      name: `sheet-${names[i]!}-${sheet.material}-${sheet.number}`,
      paper: i,
      drawing: {
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
      },
    })),
  );
  return [...single, ...sheets];
}

/** The files that a build writes beside the page of a kit, or of a `seat`. */
export function writtenFiles(kit: Kit, pattern: Pattern, seat?: number): CutFile[] {
  return cutDrawings(kit, pattern, seat).flatMap((one) => filesOf(one, writtenForms(one.paper)));
}

/** A kit's cut file by its name, in whatever form; undefined where there is no drawing of this name. */
export function cutFile(kit: Kit, pattern: Pattern, name: string): CutFile | undefined {
  const form = CUT_FORMS.find((ending) => name.endsWith(`-${ending}`));
  const drawing = form && cutDrawings(kit, pattern).find((one) => name === `${one.name}-${form}`);
  return drawing && filesOf(drawing, [form])[0];
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
