import type { Kit } from "../../core/kit/kit.ts";
import { fileName } from "../../core/packing/file-name.ts";
import { layOut } from "../../core/packing/lay-out.ts";
import { type CutDrawing, REFERENCE, referencePath, toolPaths } from "../../core/packing/operation.ts";
import { extentOf } from "../../core/packing/pack.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { revisionOf } from "../../core/revision.ts";
import { tidy } from "../../core/units/length.ts";
import type { Insert } from "../../core/window/insert.ts";
import type { Part } from "../../core/window/part.ts";
import { cutDxf } from "./dxf-file.ts";
import { cutSvg } from "./svg-file.ts";

export interface CutFile {
  readonly name: string;
  readonly text: string;
}

/** Free edge round a single part's drawing, mm. */
const EDGE = 5;

/**
 * Every cut file of a kit: each part by itself, and the parts laid on each of the kit's sheets. A drawing comes as SVG in
 * mm, as SVG in 1/72 in for readers that ignore units, and as DXF in mm and in inches; the name says which.
 */
export function cutFiles(kit: Kit, pattern: Pattern): CutFile[] {
  if (!pattern.insert) return [];
  const { parts } = pattern.insert;
  const about = aboutKit(kit, pattern, pattern.insert);
  const single = parts.flatMap((part) => versions(fileName(part.name), partDrawing(part, kit, about)));
  const sheets = kit.sheets.flatMap((size) =>
    layOut(parts, size).sheets.flatMap((sheet) => {
      const title = `${kit.title}: ${sheet.material}, ${size.name} sheet ${sheet.number}: ${sheet.parts.join(", ")}`;
      return versions(`sheet-${fileName(size.name)}-${sheet.material}-${sheet.number}`, {
        title,
        about,
        width: size.width,
        height: size.height,
        paths: sheet.paths,
      });
    }),
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

function partDrawing(part: Part, kit: Kit, about: string): CutDrawing {
  const box = extentOf(part);
  const width = Math.max(box.right - box.left, REFERENCE.width) + 2 * EDGE;
  const bodyHeight = box.bottom - box.top + 2 * EDGE;
  const paths = toolPaths(part, ([x, y]) => [x - box.left + EDGE, y - box.top + EDGE]);
  return {
    title: `${kit.title}: ${part.name}, ${part.count} of ${part.material}, seen from the front`,
    about,
    width,
    height: bodyHeight + REFERENCE.height + EDGE,
    paths: [referencePath(EDGE, bodyHeight), ...paths],
  };
}

/** Kit, revision and settings; the revision is a digest of what the parts follow from. */
function aboutKit(kit: Kit, pattern: Pattern, insert: Insert): string {
  const settings = { fit: pattern.fit, wish: insert.wish, light: kit.light, book: kit.book };
  const revision = revisionOf(settings);
  return `Leaflight kit ${kit.slug}, revision ${revision}; ${insert.wish.panel} panel, lip ${tidy(insert.wish.lip, 2)} mm, hinge ${insert.wish.hinge}; layers: through-cut, press-score, pencil-mark, measure-check (${REFERENCE.width} x ${REFERENCE.height} mm)`;
}
