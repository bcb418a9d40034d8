import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import { boxOf } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../insert/part.ts";
import type { SheetSize } from "../kit/kit.ts";
import { REFERENCE, referencePath, type ToolPath, toolPaths } from "./operation.ts";

/** Free edge of a sheet and free space between parts, mm. */
const EDGE = 8;
const APART = 4;

/** One sheet of a material with the parts that are cut from it. */
export interface LaidSheet {
  readonly material: Part["material"];
  readonly number: number;
  readonly parts: readonly string[];
  readonly paths: readonly ToolPath[];
}

/** Parts laid on sheets of one size, and those that are too large for it. */
export interface Layout {
  readonly sheet: SheetSize;
  readonly sheets: readonly LaidSheet[];
  readonly tooLarge: readonly string[];
}

interface Piece {
  readonly part: Part;
  readonly width: number;
  readonly height: number;
}

/** Lays parts on as few sheets as the packing finds, a material apart from the others; the reference rectangle has its own place. */
export function layOut(parts: readonly Part[], sheet: SheetSize): Layout {
  const pieces = parts.flatMap((part) => Array.from({ length: part.count }, () => pieceOf(part)));
  const fits = (piece: Piece): boolean => fitsIn(piece, sheet.width - 2 * EDGE, sheet.height - 2 * EDGE);
  const materials = [...new Set(pieces.map((piece) => piece.part.material))];
  return {
    sheet,
    sheets: materials.flatMap((material) =>
      packMaterial(
        material,
        pieces.filter((piece) => piece.part.material === material && fits(piece)),
        sheet,
      ),
    ),
    tooLarge: pieces.filter((piece) => !fits(piece)).map((piece) => piece.part.name),
  };
}

function packMaterial(material: Part["material"], pieces: readonly Piece[], sheet: SheetSize): LaidSheet[] {
  const packer = new MaxRectsPacker<Piece>(sheet.width - 2 * EDGE, sheet.height - 2 * EDGE, APART, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: true,
  });
  for (const piece of pieces.toSorted((a, b) => b.width * b.height - a.width * a.height)) {
    packer.add(piece.width, piece.height, piece);
  }
  return packer.bins.map((bin, i) => {
    const placed = bin.rects.map((rectangle) => ({
      piece: rectangle.data,
      x: rectangle.x + EDGE,
      y: rectangle.y + EDGE,
      turned: rectangle.rot,
    }));
    const used = Math.max(...bin.rects.map((rectangle) => rectangle.y + rectangle.height)) + EDGE;
    const roomBelow = used + APART + REFERENCE.height <= sheet.height - EDGE / 2;
    return {
      material,
      number: i + 1,
      parts: placed.map(({ piece }) => piece.part.name),
      paths: [
        ...(roomBelow ? [referencePath(EDGE, used + APART)] : []),
        ...placed.flatMap(({ piece, x, y, turned }) => toolPaths(piece.part, placer(piece.part, x, y, turned))),
      ],
    };
  });
}

/** From a part's own frame to its place on the sheet; turned a quarter clockwise where the packing turned it. */
function placer(part: Part, x: number, y: number, turned: boolean): (point: Point) => Point {
  const box = extentOf(part);
  if (!turned) return ([px, py]) => [x + px - box.left, y + py - box.top];
  return ([px, py]) => [x + box.bottom - py, y + px - box.left];
}

function pieceOf(part: Part): Piece {
  const box = extentOf(part);
  return { part, width: box.right - box.left, height: box.bottom - box.top };
}

/** What a part takes up with its scores and marks. */
export function extentOf(part: Part): ReturnType<typeof boxOf> {
  return boxOf([...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)]);
}

function fitsIn(piece: Piece, width: number, height: number): boolean {
  return (piece.width <= width && piece.height <= height) || (piece.height <= width && piece.width <= height);
}
