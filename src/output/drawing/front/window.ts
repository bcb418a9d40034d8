import type { FrontCurve } from "../../../core/fan/front-curve.ts";
import type { Area } from "../../../core/geometry/area.ts";
import { type Box, boxOf } from "../../../core/geometry/box.ts";
import { thinOut } from "../../../core/geometry/simplify.ts";
import { cardColour } from "../../../core/window/card.ts";
import { type MotifPart, setOutlines } from "../../../core/window/motif.ts";
import { toFront } from "../../../core/window/panel.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import { linePath } from "../path.ts";
import { shortRings } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { inMood, type Mood, rgbOf } from "./tone.ts";

/** How far outlines may lie from the true ones in a picture of the whole book, mm: a tenth of a pixel on a screen. */
const FINE = 0.03;

/** What the room leaves of card that is seen against the light. */
const SILHOUETTE = 0.5;

/** Edges of card catch this much more light than its face. */
const EDGE = 1.45;

/** How a window's outlines are written. */
interface WindowWriter {
  readonly outline: (area: Area) => string;
  /** The path of a motif where it is set. */
  readonly motif: (
    motif: MotifPart,
    front: (area: Area) => Area,
  ) => { readonly d: string; readonly transform?: string };
}

const AS_CUT: WindowWriter = {
  outline: (area) => shortRings(thinOut(area, FINE)),
  motif: (motif, front) => ({ d: AS_CUT.outline(front(setOutlines(motif))) }),
};

/** The window closed: sheen of the glazing, the door's card over the base frame, motifs; as seen from the front. */
export function closedWindow(window: BookWindow, curve: FrontCurve, mood: Mood, writer = AS_CUT): string {
  const { panel, card } = window.wish;
  const front = (area: Area): Area => toFront(area, curve, panel);
  const colour = rgbOf(cardColour(card, "door"));
  const motifs = window.motifs.toSorted((a, b) => a.spacers - b.spacers);
  const door = tag("path", {
    d: writer.outline(front(window.frame.outlines)),
    fill: inMood(colour, mood),
    "fill-rule": "evenodd",
    stroke: inMood(colour, mood, EDGE),
    "stroke-width": 0.5,
  });
  const set = motifs.map((motif) => motifPath(motif, writer.motif(motif, front), mood));
  return [sheen(boxOf(front(window.guide.outlines))), door, ...set].join("");
}

function motifPath({ card }: MotifPart, path: ReturnType<WindowWriter["motif"]>, mood: Mood): string {
  return tag("path", {
    ...path,
    fill: inMood(rgbOf(cardColour(card, "motif")), mood, mood === "lit" ? SILHOUETTE : 1),
    "fill-rule": "evenodd",
  });
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
