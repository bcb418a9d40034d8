import { type CutDrawing, OPERATIONS, type Operation, type ToolPath } from "../../core/packing/operation.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";

/** Colour number and line type of each layer: told apart by both. */
const LAYER: Readonly<Record<Operation, { readonly colour: number; readonly lineType: string }>> = {
  "through-cut": { colour: 7, lineType: "CONTINUOUS" },
  "press-score": { colour: 4, lineType: "DASHED" },
  "pencil-mark": { colour: 30, lineType: "DASHDOT" },
  "measure-check": { colour: 8, lineType: "DOT" },
};

/** Dash patterns in mm: positive a dash, negative a gap, 0 a dot. */
const LINE_TYPES: Readonly<Record<string, readonly number[]>> = {
  CONTINUOUS: [],
  DASHED: [3, -0.75],
  DASHDOT: [6, -0.75, 0, -0.75],
  DOT: [0, -0.75],
};

/** `$INSUNITS` and `$MEASUREMENT` of the two units (DXF header variables: 1 inch, 4 millimetres), and decimals for a thousandth of a millimetre. */
const UNITS = {
  mm: { insunits: 4, measurement: 1, scale: 1, decimals: 3 },
  inch: { insunits: 1, measurement: 0, scale: 1 / MM_PER_INCH, decimals: 5 },
} as const;

/** A cut file as DXF R12: a layer an operation, closed POLYLINEs, y up, no text, blocks or splines. */
export function cutDxf(drawing: CutDrawing, unit: "mm" | "inch"): string {
  const { insunits, measurement, scale, decimals } = UNITS[unit];
  const at = (mm: number): number => Number((mm * scale).toFixed(decimals)) + 0;
  const pairs: Pair[] = [
    [999, comment(drawing.about)],
    ...header(drawing, insunits, measurement, at),
    ...tables(at),
    [0, "SECTION"],
    [2, "ENTITIES"],
    ...drawing.paths.flatMap((path) => polyline(path, drawing.height, at)),
    [0, "ENDSEC"],
    [0, "EOF"],
  ];
  return pairs.map(([code, value]) => `${code}\n${value}\n`).join("");
}

/** Comments of R12 are read in many code pages, so other letters than ASCII are written as DXF writes them elsewhere: `\U+00E9`. */
function comment(words: string): string {
  return words
    .replaceAll("\n", " ")
    .replace(/[^ -~]/g, (letter) => `\\U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`);
}

/** From mm to the file's unit. */
type Place = (mm: number) => number;

type Pair = readonly [code: number, value: string | number];

function header(drawing: CutDrawing, insunits: number, measurement: number, at: Place): Pair[] {
  return [
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$ACADVER"],
    [1, "AC1009"],
    [9, "$INSUNITS"],
    [70, insunits],
    [9, "$MEASUREMENT"],
    [70, measurement],
    [9, "$EXTMIN"],
    [10, 0],
    [20, 0],
    [30, 0],
    [9, "$EXTMAX"],
    [10, at(drawing.width)],
    [20, at(drawing.height)],
    [30, 0],
    [0, "ENDSEC"],
  ];
}

function tables(at: Place): Pair[] {
  const types = Object.entries(LINE_TYPES).flatMap(([name, dashes]): Pair[] => [
    [0, "LTYPE"],
    [2, name],
    [70, 0],
    [3, name.toLowerCase()],
    [72, 65],
    [73, dashes.length],
    [40, at(dashes.reduce((sum, dash) => sum + Math.abs(dash), 0))],
    ...dashes.map((dash): Pair => [49, at(dash)]),
  ]);
  const layers = OPERATIONS.flatMap((operation): Pair[] => [
    [0, "LAYER"],
    [2, operation],
    [70, 0],
    [62, LAYER[operation].colour],
    [6, LAYER[operation].lineType],
  ]);
  return [
    [0, "SECTION"],
    [2, "TABLES"],
    [0, "TABLE"],
    [2, "LTYPE"],
    [70, Object.keys(LINE_TYPES).length],
    ...types,
    [0, "ENDTAB"],
    [0, "TABLE"],
    [2, "LAYER"],
    [70, OPERATIONS.length],
    ...layers,
    [0, "ENDTAB"],
    [0, "ENDSEC"],
  ];
}

function polyline(path: ToolPath, height: number, at: Place): Pair[] {
  const vertices = path.points.flatMap(([x, y]): Pair[] => [
    [0, "VERTEX"],
    [8, path.operation],
    [10, at(x)],
    [20, at(height - y)],
    [30, 0],
  ]);
  return [
    [0, "POLYLINE"],
    [8, path.operation],
    [66, 1],
    [10, 0],
    [20, 0],
    [30, 0],
    [70, path.closed ? 1 : 0],
    ...vertices,
    [0, "SEQEND"],
    [8, path.operation],
  ];
}
