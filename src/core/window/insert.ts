import { sayLength } from "../../words/lengths.ts";
import type { FrontCurve } from "../fan/front-curve.ts";
import { boxOf, outlinesOf, perimeterOf } from "../geometry/area.ts";
import { simplify } from "../geometry/simplify.ts";
import type { Pocket } from "../light/light.ts";
import type { PictureBox } from "../light/region-rows.ts";
import type { LevelMap } from "../picture/level-map.ts";
import { Problem } from "../problem.ts";
import type { UnitSystem } from "../units/length.ts";
import { closureOf } from "./closure.ts";
import { holderOf } from "./holder.ts";
import { type Motif, motifParts } from "./motif.ts";
import type { PanelKind } from "./panel.ts";
import type { Part, PositionMark } from "./part.ts";
import { CHORD_ERROR, cutWindow } from "./window-shapes.ts";

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
  /** Units of messages. */
  readonly units: UnitSystem;
}

/**
 * Cuts the window: base frame from the region's outline grown outward by the lip to its opening drawn inward by the lip;
 * glazing set back from the frame's rim by the lip; door like the base frame, hinged; closure, decoration guide, holder.
 * @throws Problem where a part falls apart or does not fit another, with the greatest lip possible
 */
export function makeInsert(wish: InsertWish, book: InsertBook): Insert {
  const { window, frame, door, glazing } = cutWindow(wish, book);
  checkClear(wish, book);
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
      use: `glued behind the door, ${sayLength(wish.lip, book.units, undefined, 2)} inside its rim`,
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
  throw new Problem("light.setback", {
    given: `the light would stand ${sayLength(free, book.units)} behind the closed ${wish.panel === "wrap" ? "window" : "door"}`,
    allowed: `at least its clearance, ${sayLength(light.clearance, book.units)}`,
    remedy: `raise the setback by ${sayLength(more, book.units, "ceil")}`,
  });
}
