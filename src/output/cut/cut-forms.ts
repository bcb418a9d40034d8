import type { CutDrawing } from "../../core/packing/operation.ts";
import { cutDxf } from "./dxf-file.ts";
import { cutSvg } from "./svg-file.ts";
import type { CutForm } from "./written-forms.ts";

/** A drawing with what its files' names begin with. */
export interface NamedDrawing {
  readonly name: string;
  readonly drawing: CutDrawing;
}

export interface CutFile {
  readonly name: string;
  readonly text: string;
}

const WRITERS: Readonly<Record<CutForm, (drawing: CutDrawing) => string>> = {
  "mm.svg": (drawing) => cutSvg(drawing, "mm"),
  "72dpi.svg": (drawing) => cutSvg(drawing, "72"),
  "mm.dxf": (drawing) => cutDxf(drawing, "mm"),
  "inch.dxf": (drawing) => cutDxf(drawing, "inch"),
};

/** The files of a drawing in some forms. */
export function filesOf({ name, drawing }: NamedDrawing, forms: readonly CutForm[]): CutFile[] {
  return forms.map((form) => ({ name: `${name}-${form}`, text: WRITERS[form](drawing) }));
}
