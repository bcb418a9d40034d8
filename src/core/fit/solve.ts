import type { Fan } from "../fan/fan.ts";
import { frontWidth, frontWidths, type LeafRange, type Viewpoint } from "../fan/front.ts";
import type { FitFailure } from "../findings/failure.ts";
import { bisect } from "../geometry/bisect.ts";
import { greatest } from "../geometry/greatest.ts";
import { nearestCount } from "../geometry/nearest.ts";
import type { PictureLeaves, Shape } from "./shape.ts";

/** What stays the same while one quantity is solved. */
export interface Frame {
  readonly fan: Omit<Fan, "opening">;
  readonly frontDepth: number;
  readonly view: Viewpoint;
  /** Place in the fan, from 0, of the leaf that carries the picture's first column. */
  readonly firstIndex: number;
  /** Greatest number of picture leaves: leaves less borders. */
  readonly mostLeaves: number;
  /** Picture width / height. */
  readonly aspect: number;
}

export interface Solution {
  readonly pictureLeaves: number;
  readonly height: number;
  readonly opening: number;
  /** Displayed width, mm. */
  readonly width: number;
  /** width / (height · aspect): 1 is true shape, above 1 is wider than drawn. */
  readonly stretch: number;
}

/** The widest opening that a fit may ask for: flat on the table seen from the front; once round for pieces read walking round. */
export function widestOpening(view: Viewpoint): number {
  return view === "front" ? Math.PI : 2 * Math.PI;
}

/** The free quantity of a shape, or why no value of it shows the picture. */
export function solveFit(shape: Shape, frame: Frame): Solution | FitFailure {
  switch (shape.solve) {
    case "pictureLeaves":
      return solveLeaves(shape.height, shape.opening, frame);
    case "opening":
      return solveOpening(shape.height, leavesOf(shape, frame), frame);
    case "height": {
      const count = leavesOf(shape, frame);
      return solution(frame, count, widthAt(frame, shape.opening, count) / frame.aspect, shape.opening);
    }
    case "nothing":
      return solution(frame, leavesOf(shape, frame), shape.height, shape.opening);
  }
}

function leavesOf({ pictureLeaves }: { readonly pictureLeaves: PictureLeaves }, frame: Frame): number {
  return pictureLeaves === "fill" ? frame.mostLeaves : pictureLeaves;
}

/**
 * The width grows with the opening up to one opening and may shrink beyond it (a picture on one side of the fan, a thick
 * rounded spine): the widest is found first, and the answer is sought on the rising side.
 */
function solveOpening(height: number, count: number, frame: Frame): Solution | FitFailure {
  const width = height * frame.aspect;
  const widest = openingOfMost(count, frame);
  const most = widthAt(frame, widest, count);
  const least = widthAt(frame, CLOSED, count);
  if (width > most) return tooWide(height, count, frame, widest);
  if (width < least)
    return { kind: "picture-too-narrow", height, width, leaves: count, least, leastHeight: least / frame.aspect };
  const opening = bisect((angle) => widthAt(frame, angle, count), width, CLOSED, widest);
  return solution(frame, count, height, opening);
}

function solveLeaves(height: number, opening: number, frame: Frame): Solution | FitFailure {
  const wanted = height * frame.aspect;
  const range: LeafRange = { first: frame.firstIndex, count: frame.mostLeaves };
  const width = frontWidths({ ...frame.fan, opening }, range, frame.frontDepth, frame.view);
  const most = width(frame.mostLeaves);
  const last = frame.mostLeaves > 2 ? most - width(frame.mostLeaves - 1) : 0;
  if (wanted > most + last / 2) return leavesShowTooLittle(height, opening, most, frame);
  let best = 2;
  let off = Math.abs(width(best) - wanted);
  for (let count = 3; count <= frame.mostLeaves; count += 1) {
    const offHere = Math.abs(width(count) - wanted);
    if (offHere < off) [best, off] = [count, offHere];
  }
  return solution(frame, best, height, opening);
}

function solution(frame: Frame, pictureLeaves: number, height: number, opening: number): Solution {
  const width = widthAt(frame, opening, pictureLeaves);
  return { pictureLeaves, height, opening, width, stretch: width / (height * frame.aspect) };
}

function tooWide(height: number, count: number, frame: Frame, widest: number): FitFailure {
  const most = widthAt(frame, widest, count);
  return {
    kind: "picture-too-wide",
    height,
    width: height * frame.aspect,
    leaves: count,
    widest,
    most,
    mostHeight: most / frame.aspect,
    enough: fewestLeaves(height * frame.aspect, count, frame),
  };
}

function leavesShowTooLittle(height: number, opening: number, most: number, frame: Frame): FitFailure {
  const wider = solveOpening(height, frame.mostLeaves, frame);
  return {
    kind: "leaves-show-too-little",
    height,
    width: height * frame.aspect,
    opening,
    leaves: frame.mostLeaves,
    most,
    mostHeight: most / frame.aspect,
    openingNeeded: "kind" in wider ? undefined : wider.opening,
  };
}

/** Fewest picture leaves of the whole book that show `wanted` at some opening, starting at its middle. */
function fewestLeaves(wanted: number, more: number, frame: Frame): number | undefined {
  return nearestCount(more, 1, frame.fan.leaves, (count) => {
    const inMiddle = { ...frame, firstIndex: Math.floor((frame.fan.leaves - count) / 2) };
    return widthAt(inMiddle, openingOfMost(count, inMiddle), count) >= wanted;
  });
}

/**
 * The opening at which the picture is widest: at the end, or at the one hump before it. A book thicker than its leaves are wide
 * may have a hump and rise again, read walking round; there the end is taken.
 */
function openingOfMost(count: number, frame: Frame): number {
  const end = widestOpening(frame.view);
  const width = (opening: number): number => widthAt(frame, opening, count);
  if (width(end) > width(end * (1 - 1e-6))) return end;
  return greatest(width, CLOSED, end);
}

function widthAt(frame: Frame, opening: number, count: number): number {
  const range: LeafRange = { first: frame.firstIndex, count };
  return frontWidth({ ...frame.fan, opening }, range, frame.frontDepth, frame.view);
}

/** An opening as good as closed; 0 itself has no rounded spine. */
const CLOSED = 1e-6;
