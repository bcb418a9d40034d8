import DxfParser from "dxf-parser";
import type { Point } from "../../core/geometry/plane.ts";

export interface DxfPath {
  readonly layer: string;
  /** y up, in the file's own unit. */
  readonly points: readonly Point[];
  readonly closed: boolean;
}

export interface DxfSheet {
  readonly header: Readonly<Record<string, unknown>>;
  readonly layers: readonly string[];
  readonly lineTypes: readonly string[];
  readonly paths: readonly DxfPath[];
}

/** What the tests read of dxf-parser's result; the package's own types do not describe how it is exported. */
interface ParsedDxf {
  readonly header: Readonly<Record<string, unknown>>;
  readonly tables: {
    readonly layer: { readonly layers: object };
    readonly lineType: { readonly lineTypes: object };
  };
  readonly entities: readonly {
    readonly type: string;
    readonly layer: string;
    readonly shape: boolean;
    readonly vertices: readonly { readonly x: number; readonly y: number }[];
  }[];
}

const Parser = DxfParser as unknown as new () => { parseSync(text: string): ParsedDxf | null };

/** Reads a cut file with dxf-parser. @throws Error on entities other than POLYLINE */
export function readDxfCut(text: string): DxfSheet {
  const file = new Parser().parseSync(text);
  if (!file) throw new Error("not read");
  return {
    header: file.header,
    layers: Object.keys(file.tables.layer.layers),
    lineTypes: Object.keys(file.tables.lineType.lineTypes),
    paths: file.entities.map(({ type, layer, shape, vertices }) => {
      if (type !== "POLYLINE") throw new Error(`an entity ${type}`);
      return { layer, points: vertices.map(({ x, y }): Point => [x, y]), closed: shape };
    }),
  };
}

/** Group codes and values of a DXF file as it stands, without a reader's help. */
export function dxfPairs(text: string): readonly (readonly [code: number, value: string])[] {
  const lines = text.split("\n");
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, i) => [Number(lines[2 * i]), lines[2 * i + 1]!]);
}
