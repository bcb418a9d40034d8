/**
 * The forms in which a drawing comes, as its files' names end: SVG in mm, SVG in 1/72 in for readers that ignore units, DXF in
 * mm and in inches.
 */
export type CutForm = "mm.svg" | "72dpi.svg" | "mm.dxf" | "inch.dxf";

export const CUT_FORMS: readonly CutForm[] = ["mm.svg", "mm.dxf", "72dpi.svg", "inch.dxf"];

/**
 * The forms that a build writes beside a kit's page, which makes the others when they are asked for: all is there in mm, but
 * for the sheets of papers after the kit's first (`paper` 1 and more), which are there as SVG.
 */
export function writtenForms(paper: number): readonly CutForm[] {
  return paper === 0 ? ["mm.svg", "mm.dxf"] : ["mm.svg"];
}
