import type { WindowFailure } from "../findings/failure.ts";
import type { Outcome } from "../findings/outcome.ts";
import { type Area, grow, intersect, outlinesOf, rectangle, signedArea } from "../geometry/area.ts";
import { type Box, boxOf } from "../geometry/box.ts";
import type { Ring } from "../geometry/point.ts";
import { simplify, thinOut } from "../geometry/simplify.ts";
import { lastPer } from "../kept-with.ts";
import type { LevelMap } from "../picture/level-map.ts";
import { type Door, hangDoor, MOST_BULGE, SHORTEST_HINGE } from "./hinge.ts";
import { toPanel } from "./panel.ts";
import type { Line } from "./part.ts";
import { shownOnFront } from "./region.ts";
import type { WindowBook, WindowWish } from "./window.ts";

/**
 * To what cut outlines are thinned out, mm. With a fifth more where short sides are joined, what the offsets need not see and
 * the chords of a round corner, no outline runs further than 0.02 from the true one, which is asked of cut files.
 */
export const CHORD_ERROR = 0.0105;

/** Points that the offsets need not see, mm. */
const FINE = 0.003;

/** Outlines as rough as this tell whether a hole breaks, mm. */
const ROUGH = 0.05;

/** Glazing must lie on the frame this far all round, mm. */
const LEAST_OVERLAP = 1.5;

/** The glazing ends this far from the hinge, mm. */
const HINGE_FREE = 1;

/** The window's own shapes, which follow from the picture on the front alone, not from the light. */
export interface WindowShapes {
  readonly hole: Area;
  readonly frame: Area;
  readonly door: Door;
  readonly glazing: Area;
}

/** Of each picture the shapes of so many places on the front: trials of other depths and lights come back to a place. */
const lastShapes = lastPer<LevelMap, Outcome<WindowShapes>>(4);

/** Cuts the shapes, or gives those that this picture had where its place on the front is the same: many figures do not move it. */
export function cutWindow(wish: WindowWish, book: WindowBook): Outcome<WindowShapes> {
  const front = JSON.stringify([wish, book.box, book.curve.points]);
  return lastShapes(book.map, front, () => shapesOf(wish, book));
}

function shapesOf(wish: WindowWish, book: WindowBook): Outcome<WindowShapes> {
  const { outline: level, lip, hinge, panel } = wish;
  const found = shownOnFront(book.map, level, book.box);
  if (!found) return { failure: { kind: "outline-hidden", level } };
  const outline = thinOut(toPanel(found.outline, book.curve, panel), FINE);
  const drawnHole = thinOut(toPanel(found.hole, book.curve, panel), FINE);
  const edge = single(grow(outline, lip));
  const hole = grow(drawnHole, -lip);
  if (hole.length !== 1 || breaksOnTheWay(drawnHole, lip)) return { failure: brokenHole(wish, drawnHole, hole) };
  const frame = simplify(withHole(edge, hole), CHORD_ERROR);
  const door = hangDoor(frame, hinge);
  if (!door) return { failure: { kind: "no-hinge", level, side: hinge, shortest: SHORTEST_HINGE, bulge: MOST_BULGE } };
  const clear = clearOfHinge(hinge, door.score);
  const glazing = simplify(intersect(grow(edge, -lip), [boundedBy(hinge, clear, boxOf(edge))]), CHORD_ERROR);
  if (glazing.length !== 1 || !reaches(hole, hinge, clear))
    return { failure: { kind: "glazing-too-small", level, lip, overlap: LEAST_OVERLAP } };
  return { value: { hole, frame, door, glazing } };
}

/** An outline with a hole that lies inside it, which is the outline drawn inward. */
function withHole(outline: Area, hole: Area): Area {
  const sameWay = signedArea(outline[0]!) > 0 === signedArea(hole[0]!) > 0;
  return [...outline, ...(sameWay ? hole.map((ring) => ring.toReversed()) : hole)];
}

function single(area: Area): Area {
  const { outer } = outlinesOf(area);
  return outer.slice(0, 1);
}

/** Lips are tried at this spacing to see where a hole breaks, mm. */
const LIP_STEP = 0.5;

/** Whether a smaller lip than the one asked for already breaks the hole: a lobe may be gone again at the full lip. */
function breaksOnTheWay(hole: Area, lip: number): boolean {
  const rough = thinOut(hole, ROUGH);
  for (let smaller = LIP_STEP; smaller < lip; smaller += LIP_STEP) {
    if (grow(rough, -smaller).length !== 1) return true;
  }
  return false;
}

/** A lip narrower than this does not hold, mm (common practice, no source). */
const LEAST_LIP = 2;

function brokenHole(wish: WindowWish, drawn: Area, left: Area): WindowFailure {
  let low = 0;
  while (low + LIP_STEP < wish.lip && grow(drawn, -low - LIP_STEP).length === 1) low += LIP_STEP;
  let high = Math.min(wish.lip, low + LIP_STEP);
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    if (grow(drawn, -middle).length === 1) low = middle;
    else high = middle;
  }
  const most = Math.floor(low * 10) / 10;
  return {
    kind: "hole-breaks",
    level: wish.outline,
    lip: wish.lip,
    closes: left.length === 0,
    most,
    least: LEAST_LIP,
  };
}

/** Where the glazing ends at the hinge: it stays on the door's side of it. */
function clearOfHinge(side: "left" | "right", hinge: Line): number {
  return hinge[0]![0] + (side === "left" ? HINGE_FREE : -HINGE_FREE);
}

/** All that lies in a box, and within x at one side of it. */
function boundedBy(side: "left" | "right", x: number, { left, top, right, bottom }: Box): Ring {
  return side === "left" ? rectangle(x, top, right, bottom) : rectangle(left, top, x, bottom);
}

/** Whether glazing that ends at x reaches past the hole there; all round it does, as no lip is narrower than that. */
function reaches(hole: Area, side: "left" | "right", x: number): boolean {
  const { left, right } = boxOf(hole);
  return (side === "left" ? left - x : x - right) > LEAST_OVERLAP - 0.01;
}
