import type { FrontCurve } from "../fan/front-curve.ts";
import {
  type Area,
  boxOf,
  grow,
  intersect,
  outlinesOf,
  perimeterOf,
  rectangle,
  sizeOf,
  subtract,
} from "../geometry/area.ts";
import { simplify, thinOut } from "../geometry/simplify.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { Pocket } from "../pocket/light.ts";
import type { PictureBox } from "../pocket/region-rows.ts";
import { Problem } from "../problem.ts";
import { tidy } from "../units/length.ts";
import { closureOf } from "./closure.ts";
import { hangDoor } from "./hinge.ts";
import { holderOf } from "./holder.ts";
import { type Motif, motifParts } from "./motif.ts";
import { type PanelKind, toPanel } from "./panel.ts";
import type { Line, Part, PositionMark } from "./part.ts";
import { outlineAndOpening, visibleRegion } from "./region.ts";

/** What the kit asks of the window. Lengths mm; levels from 1. */
export interface InsertWish {
  readonly outline: number;
  readonly outlineName: string;
  readonly lip: number;
  readonly hinge: "left" | "right";
  readonly panel: PanelKind;
}

/** The window that closes the opening, part by part. */
export interface Insert {
  readonly wish: InsertWish;
  readonly parts: readonly Part[];
  readonly stringLength: number;
  /** Length of the base frame's outer outline: what tape runs along. */
  readonly frameLength: number;
}

/** Where the window is fixed. */
export interface InsertBook {
  readonly map: LevelMap;
  readonly box: PictureBox;
  readonly curve: FrontCurve;
  readonly pocket: Pocket | undefined;
  /** Folded edges of the outer picture leaves at the head edge, where the holder sits. */
  readonly edgeWidth: number;
  readonly motifs: readonly Motif[];
}

/** How far a cut outline may run from the true one, mm (0.02 is asked of cut files). */
const CHORD_ERROR = 0.008;

/** Points that the offsets need not see, mm. */
const FINE = 0.003;

/** Outlines as rough as this tell whether an opening breaks, mm. */
const ROUGH = 0.03;

/** Glazing must lie on the frame this far all round, mm. */
const LEAST_OVERLAP = 1.5;

/** The glazing ends this far from the hinge, mm. */
const HINGE_FREE = 1;

/**
 * Cuts the window: base frame from the region's outline grown outward by the lip to its opening drawn inward by the lip;
 * glazing set back from the frame's rim by the lip; door like the base frame, hinged; closure, decoration guide, holder.
 * @throws Problem where a part falls apart or does not fit another, with the greatest lip possible
 */
export function makeInsert(wish: InsertWish, book: InsertBook): Insert {
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
  if (window.length !== 1 || breaksOnTheWay(opening, wish.lip)) throw brokenOpening(wish, opening, window);
  const frame = simplify(subtract(rim, window), CHORD_ERROR);
  checkClear(wish, book);
  const door = hangDoor(frame, wish.hinge);
  if (!door) throw noHinge(wish);
  const glazing = simplify(clearOfHinge(grow(rim, -wish.lip), door.score, wish.hinge), CHORD_ERROR);
  checkGlazing(wish, window, glazing);
  const closure = closureOf(frame, wish.hinge, door.score);
  const parts: Part[] = [
    {
      ...onBook(wish),
      name: "base frame",
      material: "card",
      outlines: frame,
      scores: [],
      marks: closure.baseMarks,
      use: "glued on the front tips",
    },
    {
      ...onBook(wish),
      name: "glazing",
      material: "acetate",
      outlines: glazing,
      scores: [],
      marks: [],
      use: `glued behind the door, ${tidy(wish.lip, 2)} mm inside its rim`,
    },
    {
      ...onBook(wish),
      name: "door",
      material: "card",
      outlines: simplify(door.outlines, CHORD_ERROR),
      scores: [door.score],
      marks: closure.doorMarks,
      use: "over the base frame; the flap folds back under it",
    },
    closure.tab,
    {
      ...onBook(wish),
      name: "decoration guide",
      material: "paper",
      outlines: simplify(window, CHORD_ERROR),
      scores: [],
      marks: silhouette(wish, book),
      use: "under the glazing while you place motifs",
    },
    holderOf(book.edgeWidth),
    ...motifParts(book.motifs, boxOf(window), book.pocket?.light),
  ];
  const outerRim = outlinesOf(frame).outer;
  return { wish, parts, stringLength: closure.stringLength, frameLength: perimeterOf(outerRim) };
}

function onBook(wish: InsertWish): Pick<Part, "count" | "frame"> {
  return { count: 1, frame: wish.panel };
}

/** Where the light stands behind the window: the largest motif covers it. */
function silhouette(wish: InsertWish, book: InsertBook): PositionMark[] {
  if (!book.pocket) return [];
  const { light, floor, centre } = book.pocket;
  const at = (x: number): number => (wish.panel === "wrap" ? book.curve.atX(x).arc : x);
  const left = at(centre.x - light.diameter / 2);
  const right = at(centre.x + light.diameter / 2);
  const top = floor - light.height;
  return [
    {
      line: [
        [left, floor],
        [left, top],
        [right, top],
        [right, floor],
        [left, floor],
      ],
      label: "light: the largest motif here",
    },
  ];
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

function brokenOpening(wish: InsertWish, opening: Area, window: Area): Problem {
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
    `a lip of ${tidy(wish.lip, 2)} mm ${fate}`,
    most >= 2
      ? `a lip of at most ${most} mm for "${wish.outlineName}"`
      : `even a lip of ${most} mm is the most that "${wish.outlineName}" takes, and 2 mm are the least that holds`,
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

function noHinge(wish: InsertWish): Problem {
  return problem(
    "insert.hinge",
    `no straight stretch of 18 mm at the ${wish.hinge} of "${wish.outlineName}" with card for a flap behind it`,
    "a side where at most 4 mm of the outline bulge beyond a straight hinge",
    "hinge the other side, widen the lip or choose another outline",
  );
}

/** Glazing must reach past the window all round. */
function checkGlazing(wish: InsertWish, window: Area, glazing: Area): void {
  if (glazing.length === 1 && sizeOf(subtract(grow(window, LEAST_OVERLAP), glazing)) < 0.01) return;
  throw problem(
    "insert.lip",
    `with a lip of ${tidy(wish.lip, 2)} mm the glazing would not reach ${LEAST_OVERLAP} mm past the window all round`,
    "an outline wider than its opening by twice that",
    "choose another outline or lip",
  );
}

/** The closed window lies on the curve through the tips; the light must stay its clearance behind it. */
function checkClear(wish: InsertWish, book: InsertBook): void {
  if (!book.pocket) return;
  const { light, centre } = book.pocket;
  const freeAt = (back: number): number =>
    Math.min(...book.curve.points.map((point) => Math.hypot(point.x - centre.x, point.z - centre.z + back))) -
    light.diameter / 2;
  const free = freeAt(0);
  if (free >= light.clearance - 1e-6) return;
  let more = 0.5;
  while (more < 100 && freeAt(more) < light.clearance) more += 0.5;
  throw problem(
    "light.setback",
    `the light would stand ${tidy(free, 1)} mm behind the closed ${wish.panel === "wrap" ? "window" : "door"}`,
    `at least its clearance, ${tidy(light.clearance, 1)} mm`,
    `raise the setback by ${tidy(more, 1)} mm`,
  );
}

function single(area: Area): Area {
  const { outer } = outlinesOf(area);
  return outer.slice(0, 1);
}

function problem(field: string, given: string, allowed: string, remedy: string): Problem {
  return new Problem(field, { given, allowed, remedy });
}
