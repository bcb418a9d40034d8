/** A count, or all leaves between the borders. */
export type PictureLeaves = "fill" | number;

/**
 * Picture leaves, height (mm) and opening (radians) are tied by the picture's shape: one of them is solved from the other
 * two, or all are stated and the picture may come out stretched.
 */
export type Shape =
  | { readonly solve: "opening"; readonly pictureLeaves: PictureLeaves; readonly height: number }
  | { readonly solve: "height"; readonly pictureLeaves: PictureLeaves; readonly opening: number }
  | { readonly solve: "pictureLeaves"; readonly height: number; readonly opening: number }
  | {
      readonly solve: "nothing";
      readonly pictureLeaves: PictureLeaves;
      readonly height: number;
      readonly opening: number;
    };

/** The stated height, mm; undefined where it is solved. */
export function heightOf(shape: Shape): number | undefined {
  return shape.solve === "height" ? undefined : shape.height;
}

/** The stated opening, radians; undefined where it is solved. */
export function openingOf(shape: Shape): number | undefined {
  return shape.solve === "opening" ? undefined : shape.opening;
}

/** The shape on another count of picture leaves; where that is solved, it stays so. */
export function withLeaves(shape: Shape, pictureLeaves: number): Shape {
  return shape.solve === "pictureLeaves" ? shape : { ...shape, pictureLeaves };
}

/** The shape at another height; where the height was solved, nothing is any more. */
export function withHeight(shape: Shape, height: number): Shape {
  return shape.solve === "height" ? { ...shape, solve: "nothing", height } : { ...shape, height };
}

/** The shape at another opening; where the opening is solved, the picture's shape decides it. */
export function withOpening(shape: Shape, opening: number): Shape {
  return shape.solve === "opening" ? shape : { ...shape, opening };
}
