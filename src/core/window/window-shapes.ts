import type { WindowFailure } from "../findings/failure.ts";
import type { Outcome } from "../findings/outcome.ts";
import { type Area, grow, intersect, outlinesOf, rectangle, sizeOf, subtract } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import { simplify, thinOut } from "../geometry/simplify.ts";
import type { LevelMap } from "../picture/level-map.ts";
import { type Door, hangDoor, MOST_BULGE, SHORTEST_HINGE } from "./hinge.ts";
import { toPanel } from "./panel.ts";
import type { Line } from "./part.ts";
import { shownOnFront } from "./region.ts";
import type { WindowBook, WindowWish } from "./window.ts";

/** To what cut outlines are thinned out, mm: with a fifth more where short sides are joined, and with what was spent before, no further than 0.02 from the true one. */
export const CHORD_ERROR = 0.013;

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

/** Of each picture the shapes of the last places on the front. */
const lastShapes = new WeakMap<LevelMap, Map<string, Outcome<WindowShapes>>>();

/** So many are remembered: trials of other depths and lights come back to a place. */
const REMEMBERED = 4;

/** Cuts the shapes, or gives those that this picture had where its place on the front is the same: many figures do not move it. */
export function cutWindow(wish: WindowWish, book: WindowBook): Outcome<WindowShapes> {
  const front = JSON.stringify([wish, book.box, book.curve.points]);
  const last = lastShapes.get(book.map) ?? new Map<string, Outcome<WindowShapes>>();
  const shapes = last.get(front) ?? shapesOf(wish, book);
  last.delete(front);
  last.set(front, shapes);
  if (last.size > REMEMBERED) last.delete(last.keys().next().value!);
  lastShapes.set(book.map, last);
  return shapes;
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
  const frame = simplify(subtract(edge, hole), CHORD_ERROR);
  const door = hangDoor(frame, hinge);
  if (!door) return { failure: { kind: "no-hinge", level, side: hinge, shortest: SHORTEST_HINGE, bulge: MOST_BULGE } };
  const glazing = simplify(clearOfHinge(grow(edge, -lip), door.score, hinge), CHORD_ERROR);
  if (!covers(glazing, hole)) return { failure: { kind: "glazing-too-small", level, lip, overlap: LEAST_OVERLAP } };
  return { value: { hole, frame, door, glazing } };
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

/** The glazing stays on the door's side of the hinge. */
function clearOfHinge(glazing: Area, hinge: Line, side: "left" | "right"): Area {
  const box = boxOf(glazing);
  const x = hinge[0]![0] + (side === "left" ? HINGE_FREE : -HINGE_FREE);
  const kept =
    side === "left"
      ? rectangle(x, box.top - 1, box.right + 1, box.bottom + 1)
      : rectangle(box.left - 1, box.top - 1, x, box.bottom + 1);
  return intersect(glazing, [kept]);
}

/** Glazing must reach past the hole all round. */
function covers(glazing: Area, hole: Area): boolean {
  return glazing.length === 1 && sizeOf(subtract(grow(hole, LEAST_OVERLAP), glazing)) < 0.01;
}
