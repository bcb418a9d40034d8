import { DOMParser, type Element, XMLSerializer } from "@xmldom/xmldom";
import sharp from "sharp";

/** How far left and right of a leaf's own column the picture is read too, in displayed millimetres. */
const SIDESTEP = 0.02;
/** Height of a raster row in displayed millimetres, as long as librsvg's 32767 rows allow it. */
const ROW = 0.01;
/** Colour of a shape that belongs to no level. */
const NO_LEVEL = 255;

export interface PictureBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A picture whose shapes have one flat colour a level: level k is rgb(k, k, k), what nothing covers is transparent. */
export class LevelPicture {
  readonly box: PictureBox;
  private readonly background: number;
  private readonly before: string;
  private readonly after: string;

  /** `selectors` holds the "#id" selectors of each level, front to back; `background` counts from 1. */
  constructor(svgText: string, selectors: string[][], background: number) {
    const document = new DOMParser().parseFromString(svgText, "image/svg+xml");
    const root = document.documentElement as Element;
    const [x, y, width, height] = root
      .getAttribute("viewBox")!
      .trim()
      .split(/[\s,]+/)
      .map(Number) as [number, number, number, number];
    this.box = { x, y, width, height };
    this.background = background;
    const elements = [root, ...Array.from(document.getElementsByTagName("*"))];
    for (const element of elements) dropPaint(element);
    root.setAttribute("fill", grey(NO_LEVEL));
    selectors.forEach((ids, i) => {
      for (const id of ids) {
        const owner = elements.find((e) => `#${e.getAttribute("id")}` === id);
        if (!owner) throw new Error(`no element ${id} in the picture`);
        owner.setAttribute("fill", grey(i + 1));
      }
    });
    root.setAttribute("shape-rendering", "crispEdges");
    root.setAttribute("preserveAspectRatio", "none");
    root.setAttribute("width", "3");
    root.setAttribute("height", "@height@");
    root.setAttribute("viewBox", "@box@");
    const [before, after] = new XMLSerializer().serializeToString(document).split("@box@");
    this.before = before!;
    this.after = after!;
  }

  /**
   * Levels down the picture at `x` (picture units) and a sidestep to its left and right, one byte a row.
   * `width` and `height` are the displayed size. Outside the picture's box everything is background.
   */
  async read(x: number, width: number, height: number): Promise<[Uint8Array, Uint8Array, Uint8Array]> {
    const rows = Math.min(32000, Math.ceil(height / ROW));
    const pixel = (SIDESTEP * this.box.width) / width;
    const strip = `${x - 1.5 * pixel} ${this.box.y} ${3 * pixel} ${this.box.height}`;
    const text = `${this.before}${strip}${this.after}`.replace("@height@", String(rows));
    const { data, info } = await sharp(Buffer.from(text)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    if (info.width !== 3 || info.height !== rows) throw new Error(`raster is ${info.width} × ${info.height}`);
    const column = (i: number) => {
      const at = x + (i - 1) * pixel;
      const inside = at >= this.box.x && at <= this.box.x + this.box.width;
      const levels = new Uint8Array(rows).fill(this.background);
      for (let row = 0; inside && row < rows; row += 1) {
        const p = 4 * (3 * row + i);
        if (data[p + 3] === 0) continue;
        if (data[p] === NO_LEVEL || data[p + 3] !== 255) throw new Error("a shape belongs to no level");
        levels[row] = data[p]!;
      }
      return levels;
    };
    return [column(0), column(1), column(2)];
  }
}

/** Removes every paint but `none`, so that a shape inherits the colour of the level above it. */
function dropPaint(element: Element): void {
  if (element.getAttribute("fill") !== "none") element.removeAttribute("fill");
  for (const name of ["stroke", "opacity", "fill-opacity"]) element.removeAttribute(name);
  const style = element.getAttribute("style");
  if (style) element.setAttribute("style", style.replace(PAINT, ""));
  if (element.localName === "style") element.textContent = (element.textContent ?? "").replace(PAINT, "");
}

const PAINT = /(?<![\w-])(?:fill\s*:(?!\s*none)|stroke[\w-]*\s*:|opacity\s*:|fill-opacity\s*:)[^;}]*;?/g;

function grey(value: number): string {
  return `rgb(${value},${value},${value})`;
}
