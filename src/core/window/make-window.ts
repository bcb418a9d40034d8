import type { LightNearWindow } from "../findings/failure.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import { outlinesOf, perimeterOf } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import { simplify } from "../geometry/simplify.ts";
import { closureOf } from "./closure.ts";
import { holderOf } from "./holder.ts";
import { motifParts } from "./motif.ts";
import type { Part, PositionMark } from "./part.ts";
import type { BookWindow, WindowBook, WindowWish } from "./window.ts";
import { CHORD_ERROR, cutWindow, type WindowShapes } from "./window-shapes.ts";

/**
 * Cuts the window: base frame from the region's outline grown outward by the lip to its hole drawn inward by the lip;
 * glazing set back from the frame's edge by the lip; door like the base frame, hinged; closure, decoration guide, holder.
 * The failure names the part that falls apart or does not fit another, with the greatest lip possible.
 */
export function makeWindow(wish: WindowWish, book: WindowBook): Outcome<BookWindow> {
  const shapes = cutWindow(wish, book);
  if (isFailure(shapes)) return shapes;
  const near = lightNearWindow(wish, book);
  return near ? { failure: near } : { value: partsFrom(wish, book, shapes.value) };
}

function partsFrom(wish: WindowWish, book: WindowBook, { hole, frame, door, glazing }: WindowShapes): BookWindow {
  const closure = closureOf(frame, wish.hinge, door.score);
  const onBook = (part: Pick<Part, "kind" | "material" | "outlines"> & Partial<Part>): Part => ({
    id: part.kind,
    count: 1,
    frame: wish.panel,
    scores: [],
    marks: [],
    ...part,
  });
  return {
    wish,
    frame: onBook({ kind: "base-frame", material: "card", outlines: frame, marks: closure.baseMarks }),
    glazing: onBook({ kind: "glazing", material: "acetate", outlines: glazing }),
    door: onBook({
      kind: "door",
      material: "card",
      outlines: simplify(door.outlines, CHORD_ERROR),
      scores: [door.score],
      marks: closure.doorMarks,
    }),
    tab: closure.tab,
    guide: onBook({
      kind: "decoration-guide",
      material: "paper",
      outlines: simplify(hole, CHORD_ERROR),
      marks: silhouette(wish, book),
    }),
    holder: holderOf(book.holdWidth),
    motifs: motifParts(book.motifs, boxOf(hole), book.pocket?.light),
    stringLength: closure.stringLength,
    frameLength: perimeterOf(outlinesOf(frame).outer),
  };
}

/** Where the light stands behind the window: the largest motif covers it. */
function silhouette(wish: WindowWish, book: WindowBook): PositionMark[] {
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
      kind: "light-here",
    },
  ];
}

/** The setback is raised by steps of this size until the light stands clear, mm. */
const SETBACK_STEP = 0.5;
const MOST_SETBACK = 100;

/** The closed window lies on the curve through the tips; the light must stay its clearance behind it. */
function lightNearWindow(wish: WindowWish, book: WindowBook): LightNearWindow | undefined {
  if (!book.pocket) return undefined;
  const { light, centre } = book.pocket;
  const freeAt = (back: number): number =>
    Math.min(...book.curve.points.map((point) => Math.hypot(point.x - centre.x, point.z - centre.z + back))) -
    light.diameter / 2;
  const free = freeAt(0);
  if (free >= light.clearance - 1e-6) return undefined;
  let more = SETBACK_STEP;
  while (more < MOST_SETBACK && freeAt(more) < light.clearance) more += SETBACK_STEP;
  return { kind: "light-near-window", free, clearance: light.clearance, more, panel: wish.panel };
}
