import { readFileSync } from "node:fs";
import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** CSS Values 4, absolute lengths: 1 in = 72 pt = 25.4 mm. */
export const MM_PER_POINT = 25.4 / 72;

/** mm from the page's left and top edge, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One subpath that is painted. Lengths mm. */
export interface Outline {
  readonly paint: "stroke" | "fill";
  readonly closed: boolean;
  /** Whether it has only the four corners of a level rectangle. */
  readonly rectangle: boolean;
  readonly box: Box;
  readonly lineWidth: number;
  /** Subpaths that are painted together share it. */
  readonly path: number;
}

/** A run of text in one direction. Size and box mm; the box runs from the foot to the top of small letters. */
export interface Words {
  readonly text: string;
  readonly size: number;
  readonly upright: boolean;
  /** Where it begins on its base line. */
  readonly x: number;
  readonly y: number;
  readonly box: Box;
}

/** A page read back with pdfjs-dist: what is painted on it and what it says. */
export interface ReadPage {
  readonly number: number;
  readonly page: PDFPageProxy;
  readonly width: number;
  readonly height: number;
  readonly words: readonly Words[];
  readonly outlines: readonly Outline[];
  readonly images: number;
  /** Text in the order of the file, runs joined, white space collapsed. */
  readonly text: string;
}

export interface ReadPdf {
  readonly document: PDFDocumentProxy;
  readonly pages: readonly ReadPage[];
}

export async function readPdf(path: string): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1)
    pages.push(await readPage(await document.getPage(number), number));
  return { document, pages };
}

async function readPage(page: PDFPageProxy, number: number): Promise<ReadPage> {
  const [left, bottom, right, top] = page.view as [number, number, number, number];
  const place: Place = (x, y) => [(x - left) * MM_PER_POINT, (top - y) * MM_PER_POINT];
  const { items } = await page.getTextContent();
  const runs = items.filter((item) => "str" in item);
  const { outlines, images } = readDrawing(await page.getOperatorList(), place);
  return {
    number,
    page,
    width: (right - left) * page.userUnit * MM_PER_POINT,
    height: (top - bottom) * page.userUnit * MM_PER_POINT,
    words: runs.filter((run) => run.str.trim() !== "").map((run) => readWords(run, place)),
    outlines,
    images,
    text: runs
      .map((run) => run.str + (run.hasEOL ? " " : ""))
      .join("")
      .replace(/\s+/g, " "),
  };
}

type Place = (x: number, y: number) => [number, number];

function readWords(
  run: { readonly str: string; readonly transform: number[]; readonly width: number },
  place: Place,
): Words {
  const [a, b, , , e, f] = run.transform as Matrix;
  const size = Math.hypot(a, b);
  const along = [a / size, b / size] as const;
  const corner = (u: number, v: number): [number, number] =>
    place(e + along[0] * u - along[1] * v, f + along[1] * u + along[0] * v);
  const corners = [corner(0, 0), corner(run.width, 0), corner(0, size * 0.5), corner(run.width, size * 0.5)];
  const [x, y] = place(e, f);
  return { text: run.str, size: size * MM_PER_POINT, upright: Math.abs(b) < 1e-6, x, y, box: boxOf(corners) };
}

function boxOf(points: readonly (readonly [number, number])[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

type Matrix = [number, number, number, number, number, number];
interface State {
  readonly matrix: Matrix;
  readonly lineWidth: number;
}

/** The product that first applies `inner` and then `outer` (ISO 32000 8.3.4). */
function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

const STROKES: readonly number[] = [OPS.stroke, OPS.closeStroke];
const FILLS: readonly number[] = [OPS.fill, OPS.eoFill, OPS.fillStroke, OPS.eoFillStroke];
const IMAGES: readonly number[] = [
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintInlineImageXObjectGroup,
  OPS.paintImageXObjectRepeat,
  OPS.paintImageMaskXObject,
  OPS.paintImageMaskXObjectGroup,
  OPS.paintImageMaskXObjectRepeat,
];

function readDrawing(
  list: { readonly fnArray: number[]; readonly argsArray: unknown[] },
  place: Place,
): { outlines: Outline[]; images: number } {
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], lineWidth: 1 };
  const stack: State[] = [];
  const outlines: Outline[] = [];
  let images = 0;
  list.fnArray.forEach((operator, i) => {
    const values = list.argsArray[i];
    if (operator === OPS.save) stack.push(state);
    else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) state = stack.pop()!;
    else if (operator === OPS.transform) state = { ...state, matrix: multiply(state.matrix, values as Matrix) };
    else if (operator === OPS.paintFormXObjectBegin) {
      stack.push(state);
      const [inner] = values as [Matrix | null];
      if (inner) state = { ...state, matrix: multiply(state.matrix, inner) };
    } else if (operator === OPS.setLineWidth) state = { ...state, lineWidth: (values as [number])[0] };
    else if (operator === OPS.setGState) {
      const width = (values as [[string, number][]])[0].find(([key]) => key === "LW");
      if (width) state = { ...state, lineWidth: width[1] };
    } else if (IMAGES.includes(operator)) images += 1;
    else if (operator === OPS.constructPath) {
      const [painter, [numbers]] = values as [number, [ArrayLike<number> | null]];
      const paint = STROKES.includes(painter) ? "stroke" : FILLS.includes(painter) ? "fill" : undefined;
      if (paint && numbers) outlines.push(...subpaths(Array.from(numbers), state, place, paint, i));
    }
  });
  return { outlines, images };
}

/** How many coordinates follow each segment code of a path in pdfjs-dist: move, line, cubic, quadratic, close. */
const COORDINATES = [2, 2, 6, 4, 0] as const;

function subpaths(
  numbers: readonly number[],
  state: State,
  place: Place,
  paint: Outline["paint"],
  path: number,
): Outline[] {
  const [a, b, c, d, e, f] = state.matrix;
  const lineWidth = state.lineWidth * Math.sqrt(Math.abs(a * d - b * c)) * MM_PER_POINT;
  const found: { points: [number, number][]; closed: boolean; curved: boolean }[] = [];
  for (let at = 0; at < numbers.length; ) {
    const code = numbers[at]!;
    const count = COORDINATES[code as 0];
    if (count === undefined) throw new Error(`segment code ${code} of pdfjs-dist is not known here`);
    if (code === 0) found.push({ points: [], closed: false, curved: false });
    const current = found.at(-1)!;
    for (let n = at + 1; n < at + 1 + count; n += 2) {
      const [x, y] = [numbers[n]!, numbers[n + 1]!];
      current.points.push(place(a * x + c * y + e, b * x + d * y + f));
    }
    if (code === 2 || code === 3) current.curved = true;
    if (code === 4) current.closed = true;
    at += 1 + count;
  }
  return found
    .filter(({ points }) => points.length > 1)
    .map(({ points, closed, curved }) => {
      const box = boxOf(points);
      return { paint, closed, rectangle: !curved && isRectangle(points, box), box, lineWidth, path };
    });
}

function isRectangle(points: readonly [number, number][], box: Box): boolean {
  const near = (one: number, other: number): boolean => Math.abs(one - other) < 1e-3;
  const corners = points.length === 5 && near(points[0]![0], points[4]![0]) ? points.slice(0, 4) : points;
  return (
    corners.length === 4 &&
    corners.every(
      ([x, y], i) =>
        (near(x, box.left) || near(x, box.right)) &&
        (near(y, box.top) || near(y, box.bottom)) &&
        near(x, corners[(i + 1) % 4]![0]) !== near(y, corners[(i + 1) % 4]![1]),
    )
  );
}

export function widthOf(box: Box): number {
  return box.right - box.left;
}

export function heightOf(box: Box): number {
  return box.bottom - box.top;
}
