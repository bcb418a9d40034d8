import { type CutDrawing, OPERATIONS, type Operation, type ToolPath } from "../../core/packing/operation.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { linePath, ringPath } from "../drawing/path.ts";
import { num } from "../drawing/svg-text.ts";
import { escapeXml } from "../xml.ts";

/** How a line of each operation is drawn: by pattern as well as by colour. Dash lengths in mm. */
const LOOK: Readonly<Record<Operation, { readonly colour: string; readonly dash: readonly number[] }>> = {
  "through-cut": { colour: "#000000", dash: [] },
  "press-score": { colour: "#1d4b53", dash: [3, 0.75] },
  "pencil-mark": { colour: "#8a5512", dash: [6, 0.75, 0.125, 0.75] },
  "measure-check": { colour: "#777777", dash: [0.125, 0.75] },
};

const STROKE = 0.25;

/** Thousandths of a millimetre, or of a point. */
const DECIMALS = 3;

/** Points of a typographic inch: readers that ignore units take a number for this many to the inch. */
const PER_INCH = 72;

/**
 * A cut file as SVG: millimetres, absolute coordinates, one closed path a contour, a group a layer, no text, style,
 * transform or use. `unit: "72"` is the variant for readers that ignore units: the same drawing in 1/72 in.
 */
export function cutSvg(drawing: CutDrawing, unit: "mm" | "72"): string {
  const scale = unit === "mm" ? 1 : PER_INCH / MM_PER_INCH;
  const size = (value: number): string => num(value * scale, DECIMALS);
  const suffix = unit === "mm" ? "mm" : "";
  const layers = OPERATIONS.toReversed().map((operation) => {
    const paths = drawing.paths.filter((path) => path.operation === operation);
    if (paths.length === 0) return "";
    const { colour, dash } = LOOK[operation];
    const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(size).join(" ")}"` : "";
    const drawn = paths.map(
      (path) =>
        `<path d="${pathData(path, scale)}" fill="none" stroke="${colour}" stroke-width="${size(STROKE)}"${dashes}/>`,
    );
    return `<g id="${operation}">\n${drawn.join("\n")}\n</g>\n`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size(drawing.width)}${suffix}" height="${size(drawing.height)}${suffix}" viewBox="0 0 ${size(drawing.width)} ${size(drawing.height)}">
<title>${escapeXml(drawing.title)}</title>
<desc>${escapeXml(drawing.about)}</desc>
${layers.join("")}</svg>
`;
}

function pathData({ points, closed }: ToolPath, scale: number): string {
  const placed = points.map(([x, y]) => [x * scale, y * scale] as const);
  return closed ? ringPath(placed, DECIMALS) : linePath(placed, DECIMALS);
}
