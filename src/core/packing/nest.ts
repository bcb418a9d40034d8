import type { Box } from "../geometry/box.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../window/part.ts";
import { CellField } from "./cell-field.ts";
import { type CellMask, cellMask } from "./cell-mask.ts";
import { APART, type Packing, type Piece, type PlacedPart, packParts, piecesOf } from "./pack.ts";

/** Side of a cell, mm; on larger fields so many cells stand along a side. */
const CELL = 2;
const MOST_CELLS = 160;

/** More pieces than these are tried in one order alone. */
const MANY = 100;

/** Orders in which pieces are offered, the greatest first. */
const ORDERS: readonly ((piece: Piece) => number)[] = [
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => width * height,
];

/**
 * Packs parts by their outlines, so that small ones lie in the openings and hollows of large ones, in quarter turns. Never takes
 * more fields than `packParts` does, and of equally many takes up the least of them.
 */
export function nestParts<P extends Part>(parts: readonly P[], width: number, height: number): Packing<P> {
  const plain = packParts(parts, width, height);
  const pieces = piecesOf(parts.filter((part) => !plain.tooLarge.includes(part)));
  const orders = pieces.length > MANY ? ORDERS.slice(0, 1) : ORDERS;
  const nested = orders.map((measure) =>
    nestInOrder(
      pieces.toSorted((a, b) => measure(b) - measure(a)),
      { width, height },
    ),
  );
  const fields = [plain.fields, ...nested].reduce((best, one) => (isBetter(one, best) ? one : best));
  return { fields, tooLarge: plain.tooLarge };
}

function isBetter(one: Packing["fields"], other: Packing["fields"]): boolean {
  if (one.length !== other.length) return one.length < other.length;
  return areaOfFields(one) < areaOfFields(other);
}

/** What the parts of each field take up of it: the box round them, mm². */
export function areaOfFields(fields: readonly (readonly Pick<PlacedPart, "x" | "y" | "width" | "height">[])[]): number {
  return fields.reduce((sum, field) => {
    const [left, top] = [Math.min(...field.map(({ x }) => x)), Math.min(...field.map(({ y }) => y))];
    const right = Math.max(...field.map(({ x, width }) => x + width));
    const bottom = Math.max(...field.map(({ y, height }) => y + height));
    return sum + (right - left) * (bottom - top);
  }, 0);
}

interface Field {
  readonly width: number;
  readonly height: number;
}

/** A piece turned by quarters, with the cells that it covers. */
interface Turned {
  readonly place: (point: Point) => Point;
  readonly width: number;
  readonly height: number;
  readonly mask: CellMask;
}

function nestInOrder<P extends Part>(pieces: readonly Piece<P>[], field: Field): PlacedPart<P>[][] {
  const cell = Math.max(CELL, Math.max(field.width, field.height) / MOST_CELLS);
  const round = Math.ceil(APART / cell - 1e-9);
  const [columns, rows] = [field.width, field.height].map((side) => Math.ceil(side / cell - 1e-9));
  const fields: { readonly cells: CellField; readonly placed: PlacedPart<P>[] }[] = [];
  const turns = new Map<P, Turned[]>();
  for (const { part, box } of pieces) {
    if (!turns.has(part)) turns.set(part, turnsOf(part, box, cell, field));
    const lay = (on: (typeof fields)[number]): boolean => {
      const spot = spotOn(on.cells, turns.get(part)!, cell, field);
      if (!spot) return false;
      const { turned, x, y } = spot;
      on.cells.take(turned.mask, spot, round);
      on.placed.push(placed(part, turned, x * cell, y * cell));
      return true;
    };
    if (fields.some(lay)) continue;
    fields.push({ cells: new CellField(columns!, rows!), placed: [] });
    lay(fields.at(-1)!);
  }
  return fields.map(({ placed: own }) => own);
}

/** Of all quarter turns the place whose foot is uppermost. */
function spotOn(
  cells: CellField,
  turns: readonly Turned[],
  cell: number,
  { width, height }: Field,
): { readonly turned: Turned; readonly x: number; readonly y: number } | undefined {
  let best: { readonly turned: Turned; readonly x: number; readonly y: number; readonly foot: number } | undefined;
  for (const turned of turns) {
    const most = {
      x: Math.floor((width - turned.width) / cell + 1e-9),
      y: Math.floor((height - turned.height) / cell + 1e-9),
    };
    const place = cells.placeOf(turned.mask, most);
    if (!place) continue;
    const foot = place.y * cell + turned.height;
    if (!best || foot < best.foot - 1e-9) best = { turned, ...place, foot };
  }
  return best;
}

function placed<P extends Part>(part: P, { place, width, height }: Turned, x: number, y: number): PlacedPart<P> {
  return {
    part,
    x,
    y,
    width,
    height,
    place: (point) => {
      const [across, down] = place(point);
      return [across + x, down + y];
    },
  };
}

/** A part in those of its four quarter turns that the field takes. */
function turnsOf(part: Part, box: Box, cell: number, field: Field): Turned[] {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const places: readonly ((point: Point) => Point)[] = [
    ([x, y]) => [x - box.left, y - box.top],
    ([x, y]) => [box.bottom - y, x - box.left],
    ([x, y]) => [box.right - x, box.bottom - y],
    ([x, y]) => [y - box.top, box.right - x],
  ];
  return places.flatMap((place, i) => {
    const size = i % 2 === 0 ? { width, height } : { width: height, height: width };
    if (size.width > field.width + 1e-9 || size.height > field.height + 1e-9) return [];
    const inCells = (line: readonly Point[]): Point[] =>
      line.map((point) => {
        const [x, y] = place(point);
        return [x / cell, y / cell];
      });
    const lines = [...part.scores, ...part.marks.map((mark) => mark.line)].map(inCells);
    const mask = cellMask(part.outlines.map(inCells), lines, size.width / cell, size.height / cell);
    return [{ place, ...size, mask }];
  });
}
