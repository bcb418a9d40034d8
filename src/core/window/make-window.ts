import type { LightNearWindow } from "../findings/failure.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import { outlinesOf, perimeterOf } from "../geometry/area.ts";
import { type Box, boxOf } from "../geometry/box.ts";
import { simplify } from "../geometry/simplify.ts";
import type { Pocket } from "../light/light.ts";
import { closureOf } from "./closure.ts";
import { holderOf } from "./holder.ts";
import { motifParts } from "./motif-parts.ts";
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
  const ofCard = wish.card ? { card: wish.card } : {};
  const onBook = (part: Pick<Part, "kind" | "material" | "outlines"> & Partial<Part>): Part => ({
    id: part.kind,
    count: 1,
    frame: wish.panel,
    scores: [],
    marks: [],
    ...(part.material === "card" ? ofCard : {}),
    ...part,
  });
  const seen = book.pocket && lightSeen(book.pocket, wish, book);
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
    tab: { ...closure.tab, ...ofCard },
    guide: onBook({
      kind: "decoration-guide",
      material: "paper",
      outlines: simplify(hole, CHORD_ERROR),
      marks: seen ? [silhouette(seen)] : [],
    }),
    holder: holderOf(book.holdWidth),
    motifs: motifParts(book.motifs, { frame: boxOf(frame), hole: boxOf(hole), light: seen }),
    stringLength: closure.stringLength,
    frameLength: perimeterOf(outlinesOf(frame).outer),
  };
}

/** The light as it stands behind the window, in the frame of the parts on the book. */
export function lightSeen(
  { light, floor, centre }: Pocket,
  { panel }: Pick<WindowWish, "panel">,
  { curve }: Pick<WindowBook, "curve">,
): Box {
  const at = (x: number): number => (panel === "wrap" ? curve.atX(x).arc : x);
  return {
    left: at(centre.x - light.diameter / 2),
    top: floor - light.height,
    right: at(centre.x + light.diameter / 2),
    bottom: floor,
  };
}

/** Where the light stands: what is to cover it goes here. */
function silhouette({ left, top, right, bottom }: Box): PositionMark {
  return {
    line: [
      [left, bottom],
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    kind: "light-here",
  };
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
