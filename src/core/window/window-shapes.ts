import { sayLength } from "../../words/lengths.ts";
import { type Area, boxOf, grow, intersect, outlinesOf, rectangle, sizeOf, subtract } from "../geometry/area.ts";
import { simplify, thinOut } from "../geometry/simplify.ts";
import type { LevelMap } from "../picture/level-map.ts";
import { Problem } from "../problem.ts";
import { type Door, hangDoor } from "./hinge.ts";
import type { InsertBook, InsertWish } from "./insert.ts";
import { toPanel } from "./panel.ts";
import type { Line } from "./part.ts";
import { outlineAndOpening, visibleRegion } from "./region.ts";

/** How far a cut outline may run from the true one, mm (0.02 is asked of cut files). */
export const CHORD_ERROR = 0.008;

/** Points that the offsets need not see, mm. */
const FINE = 0.003;

/** Outlines as rough as this tell whether an opening breaks, mm. */
const ROUGH = 0.05;

/** Glazing must lie on the frame this far all round, mm. */
const LEAST_OVERLAP = 1.5;

/** The glazing ends this far from the hinge, mm. */
const HINGE_FREE = 1;

/** The window's own shapes, which follow from the picture on the front alone, not from the light. */
export interface WindowShapes {
  readonly window: Area;
  readonly frame: Area;
  readonly door: Door;
  readonly glazing: Area;
}

const lastShapes = new WeakMap<LevelMap, { readonly front: string; readonly shapes: WindowShapes }>();

/** Cuts the shapes, or gives the last ones of this picture where its place on the front is the same: many figures do not move it. */
export function cutWindow(wish: InsertWish, book: InsertBook): WindowShapes {
  const front = JSON.stringify([wish, book.box, book.curve.points]);
  const last = lastShapes.get(book.map);
  if (last?.front === front) return last.shapes;
  const shapes = shapesOf(wish, book);
  lastShapes.set(book.map, { front, shapes });
  return shapes;
}

function shapesOf(wish: InsertWish, book: InsertBook): WindowShapes {
  const found = outlineAndOpening(visibleRegion(book.map, wish.outline, book.box));
  if (!found)
    throw problem(
      "insert.outline",
      `"${wish.outlineName}" shows nowhere in the picture`,
      "a level that shows as one region",
      "name another level",
    );
  const outline = thinOut(toPanel(found.outline, book.curve, wish.panel), FINE);
  const opening = thinOut(toPanel(found.opening, book.curve, wish.panel), FINE);
  const rim = single(grow(outline, wish.lip));
  const window = grow(opening, -wish.lip);
  if (window.length !== 1 || breaksOnTheWay(opening, wish.lip)) throw brokenOpening(wish, book, opening, window);
  const frame = simplify(subtract(rim, window), CHORD_ERROR);
  const door = hangDoor(frame, wish.hinge);
  if (!door) throw noHinge(wish, book);
  const glazing = simplify(clearOfHinge(grow(rim, -wish.lip), door.score, wish.hinge), CHORD_ERROR);
  checkGlazing(wish, book, window, glazing);
  return { window, frame, door, glazing };
}

function single(area: Area): Area {
  const { outer } = outlinesOf(area);
  return outer.slice(0, 1);
}

/** Lips are tried at this spacing to see where an opening breaks, mm. */
const LIP_STEP = 0.5;

/** Whether a smaller lip than the one asked for already breaks the opening: a lobe may be gone again at the full lip. */
function breaksOnTheWay(opening: Area, lip: number): boolean {
  const rough = thinOut(opening, ROUGH);
  for (let smaller = LIP_STEP; smaller < lip; smaller += LIP_STEP) {
    if (grow(rough, -smaller).length !== 1) return true;
  }
  return false;
}

function brokenOpening(wish: InsertWish, book: InsertBook, opening: Area, window: Area): Problem {
  let low = 0;
  while (low + LIP_STEP < wish.lip && grow(opening, -low - LIP_STEP).length === 1) low += LIP_STEP;
  let high = Math.min(wish.lip, low + LIP_STEP);
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    if (grow(opening, -middle).length === 1) low = middle;
    else high = middle;
  }
  const fate = window.length === 0 ? "closes the opening up" : "breaks the opening into pieces";
  const most = Math.floor(low * 10) / 10;
  return problem(
    "insert.lip",
    `a lip of ${sayLength(wish.lip, book.units, undefined, 2)} ${fate}`,
    most >= 2
      ? `a lip of at most ${sayLength(most, book.units, "floor")} for "${wish.outlineName}"`
      : `even a lip of ${sayLength(most, book.units, "floor")} is the most that "${wish.outlineName}" takes, and ${sayLength(2, book.units, "ceil")} are the least that holds`,
    most >= 2
      ? "make the lip smaller or the opening's narrow places wider"
      : "make the opening's narrow places wider or choose another outline",
  );
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

function noHinge(wish: InsertWish, book: InsertBook): Problem {
  return problem(
    "insert.hinge",
    `no straight stretch of ${sayLength(18, book.units)} at the ${wish.hinge} of "${wish.outlineName}" with card for a flap behind it`,
    `a side where at most ${sayLength(4, book.units, "floor")} of the outline bulge beyond a straight hinge`,
    "hinge the other side, widen the lip or choose another outline",
  );
}

/** Glazing must reach past the window all round. */
function checkGlazing(wish: InsertWish, book: InsertBook, window: Area, glazing: Area): void {
  if (glazing.length === 1 && sizeOf(subtract(grow(window, LEAST_OVERLAP), glazing)) < 0.01) return;
  throw problem(
    "insert.lip",
    `with a lip of ${sayLength(wish.lip, book.units, undefined, 2)} the glazing would not reach ${sayLength(LEAST_OVERLAP, book.units)} past the window all round`,
    "an outline wider than its opening by twice that",
    "choose another outline or lip",
  );
}

function problem(field: string, given: string, allowed: string, remedy: string): Problem {
  return new Problem(field, { given, allowed, remedy });
}
