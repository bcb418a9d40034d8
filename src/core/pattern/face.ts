import type { Fan } from "../fan/fan.ts";
import { type Front, type LeafRange, layFront } from "../fan/front.ts";
import { type FrontCurve, frontCurve } from "../fan/front-curve.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import { type FaceMap, layFaces } from "../fit/face.ts";
import { type Solution, solveFit } from "../fit/solve.ts";
import { frontDepth } from "../kit/cut-kit.ts";
import type { Kit } from "../kit/kit.ts";
import type { PictureBox } from "../light/region-rows.ts";
import { roundTo } from "../units/length.ts";
import {
  advisedOnLeaf,
  bookFailure,
  cornerFailure,
  flapFailure,
  levelFailure,
  lostLeafFailure,
  openingFailure,
  placeFailure,
} from "./limits.ts";

/** Where the picture comes to lie: what every limit but those of light and window looks at. */
export interface Layout {
  readonly fan: Fan;
  readonly range: LeafRange;
  readonly solution: Solution;
  readonly head: number;
}

/** The fan with the picture laid out on its front. */
export interface Face extends Layout {
  readonly front: Front;
  readonly faces: readonly FaceMap[];
}

/** Lays a kit's picture out on its book without folding a leaf, or says why it cannot be. */
export function layOutPicture(kit: Kit): Outcome<Layout> {
  const failure =
    bookFailure(kit) ?? levelFailure(kit) ?? flapFailure(kit) ?? cornerFailure(kit) ?? openingFailure(kit);
  if (failure) return { failure };
  const { book, fit } = kit;
  const first = fit.borderLeaves[0];
  const fan = {
    leaves: book.leaves,
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    spine: fit.spine,
    direction: book.direction,
  };
  const solution = solveFit(fit.shape, {
    fan,
    frontDepth: frontDepth(kit),
    view: fit.view,
    firstIndex: first,
    mostLeaves: book.leaves - first - fit.borderLeaves[1],
    aspect: kit.picture.width / kit.picture.height,
  });
  if ("kind" in solution) return { failure: advisedOnLeaf(kit, solution) };
  const head = fit.head ?? roundTo((book.leafHeight - solution.height) / 2, fit.markStep);
  const range = { first, count: solution.pictureLeaves };
  const misplaced = placeFailure(kit, solution, head) ?? lostLeafFailure(kit, range);
  if (misplaced) return { failure: misplaced };
  return { value: { fan: { ...fan, opening: solution.opening }, range, solution, head } };
}

/** The face of a kit that is laid out. */
export function faceOf(kit: Kit, layout: Layout): Face {
  const front = layFront(layout.fan, layout.range, frontDepth(kit), kit.fit.view);
  const lost = kit.fit.lostLeaves.map((leaf) => leaf - 1 - layout.range.first);
  return { ...layout, front, faces: layFaces(front, lost) };
}

/** The curve through a face's front tips. */
export function curveOfFace(kit: Kit, face: Face): FrontCurve {
  return frontCurve(face.fan, face.range, face.front, frontDepth(kit));
}

export function boxOfFace(face: Face): PictureBox {
  return { head: face.head, height: face.solution.height, width: face.solution.width };
}

/** The face of a kit that has a pattern. @throws Error for one that has none, which is a fault of the program */
export function faceOfFitting(kit: Kit): Face {
  const layout = layOutPicture(kit);
  if (isFailure(layout)) throw new Error(`${kit.slug} has a pattern, but no layout: ${layout.failure.kind}`);
  return faceOf(kit, layout.value);
}
