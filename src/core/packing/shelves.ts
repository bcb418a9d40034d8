/** A piece on a shelf: its place, and whether it was turned by a quarter to lie down. */
export interface ShelvedPiece<T> {
  readonly piece: T;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/**
 * Lays pieces on shelves, each lying down where the field is wide enough, the highest first: next fit by decreasing height
 * (Coffman, Garey, Johnson and Tarjan, 1980). `sizeOf` gives mm; every piece must fit the field one way or the other.
 */
export function packOnShelves<T>(
  pieces: readonly T[],
  sizeOf: (piece: T) => { readonly width: number; readonly height: number },
  field: { readonly width: number; readonly height: number },
  apart: number,
): ShelvedPiece<T>[][] {
  const lying = pieces.map((piece) => layDown(piece, sizeOf(piece), field.width)).sort((a, b) => b.height - a.height);
  const fields: ShelvedPiece<T>[][] = [];
  let top = 0;
  let shelf = 0;
  let left = Number.POSITIVE_INFINITY;
  for (const one of lying) {
    if (left + one.width > field.width) {
      top += shelf + apart;
      left = 0;
      shelf = one.height;
      if (fields.length === 0 || top + one.height > field.height) {
        fields.push([]);
        top = 0;
      }
    }
    fields.at(-1)!.push({ ...one, x: left, y: top });
    left += one.width + apart;
  }
  return fields;
}

function layDown<T>(
  piece: T,
  { width, height }: { readonly width: number; readonly height: number },
  room: number,
): Omit<ShelvedPiece<T>, "x" | "y"> {
  const isLying = width >= height;
  const long = Math.max(width, height);
  const short = Math.min(width, height);
  return long <= room
    ? { piece, width: long, height: short, turned: !isLying }
    : { piece, width: short, height: long, turned: isLying && width !== height };
}
