import type { FrontCurve } from "../../../core/fan/front-curve.ts";
import { type Box, boxOf } from "../../../core/geometry/box.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { seatMotifs } from "../../../core/window/motif-seats.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import { linePath, ringsPath } from "../path.ts";
import { tag } from "../svg-text.ts";
import { inMood, type Mood } from "./tone.ts";

const CARD = [96, 120, 120] as const;
const CARD_EDGE = [176, 196, 190] as const;
const MOTIF = [46, 38, 44] as const;

/** The window closed: sheen of the glazing, motifs on it, the door's card over the base frame; as seen from the front. */
export function closedWindow(pattern: Pattern, window: BookWindow, curve: FrontCurve, mood: Mood): string {
  const toFront = ([x, y]: Point): Point => [window.wish.panel === "wrap" ? curve.atArc(x).x : x, y];
  const hole = boxOf(window.guide.outlines.map((ring) => ring.map(toFront)));
  const frame = window.frame.outlines.map((ring) => ring.map(toFront));
  const { pocket } = pattern;
  const motifs = seatMotifs(
    window.motifs.map((motif) => motif.outlines),
    hole,
    pocket && { middle: pocket.centre.x, floor: pocket.floor },
  );
  return [
    sheen(hole),
    ...motifs.map((rings) => tag("path", { d: ringsPath(rings), fill: inMood(MOTIF, mood), "fill-rule": "evenodd" })),
    tag("path", {
      d: ringsPath(frame),
      fill: inMood(CARD, mood),
      "fill-rule": "evenodd",
      stroke: inMood(CARD_EDGE, mood),
      "stroke-width": 0.5,
    }),
  ].join("");
}

/** Light from above left on the glazing. */
function sheen({ left, top, right, bottom }: Box): string {
  const corner = linePath([
    [left, top],
    [left + (right - left) * 0.45, top],
    [left, bottom - (bottom - top) * 0.25],
  ]);
  return tag("path", { d: `${corner}z`, fill: "#ffffff", "fill-opacity": "0.05" });
}
