import type { LeafNumber } from "../book/leaf-number.ts";
import type { Kit } from "../kit/kit.ts";
import { curveOfFace, type Face } from "../pattern/face.ts";

/** Where the picture and its leaves' columns lie, mm: x from the fan's middle as the viewer sees it (walking round: along the tips), y from the head. */
export interface PicturePlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The column of a picture leaf. */
  readonly column: (leaf: LeafNumber) => { readonly left: number; readonly right: number };
}

export function placePicture(kit: Kit, face: Face): PicturePlace {
  const { edges, width } = face.front;
  const corner = curveOfFace(kit, face).atAcross(0);
  const left = kit.fit.view === "along" ? corner.arc : corner.x;
  const ltr = kit.book.direction === "ltr";
  return {
    left,
    top: face.head,
    width,
    height: face.solution.height,
    column: (leaf) => {
      const cell = leaf - 1 - face.range.first;
      const [near, far] = [edges[cell]!, edges[cell + 1]!];
      return ltr ? { left: left + near, right: left + far } : { left: left + width - far, right: left + width - near };
    },
  };
}
