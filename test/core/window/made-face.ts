import type { Pocket } from "../../../src/core/light/light.ts";
import type { MotifPart } from "../../../src/core/window/motif.ts";
import type { Part } from "../../../src/core/window/part.ts";
import type { BookWindow } from "../../../src/core/window/window.ts";
import type { Point, Ring } from "../geometry/plane.ts";
import { box, plate } from "./made.ts";

type Face = Pick<BookWindow, "wish" | "frame" | "guide" | "motifs">;

/** A flat window of 100 by 100 mm with a hole of 60 by 60 in its middle; x from −50, y from 0. */
export function faceWith(...motifs: readonly MotifPart[]): Face {
  return {
    wish: { outline: 1, lip: 3, hinge: "left", panel: "flat" },
    frame: part("base-frame", plate(box(-50, 0, 50, 100), box(-30, 20, 30, 80))),
    guide: part("decoration-guide", [box(-30, 20, 30, 80)]),
    motifs,
  };
}

/** A motif of card with its corner at a place. */
export function motifAt(seat: Point, outlines: readonly Ring[], spacers = 0): MotifPart {
  return { ...part("motif", outlines), seat, spacers };
}

/** A light of 20 by 40 mm in the middle, its foot at 75. */
export const LIGHT: Pocket = {
  light: { level: 3, diameter: 20, height: 40, clearance: 1, setback: 4, floor: 75 },
  floor: 75,
  centre: { x: 0, z: -30 },
  notches: [],
  leastWidth: 40,
  largest: { diameter: 20, height: 40 },
};

function part(kind: Part["kind"], outlines: readonly Ring[]): Part {
  return { id: kind, kind, material: "card", count: 1, frame: "own", outlines, scores: [], marks: [] };
}
