import type { FrontCurve } from "../fan/front-curve.ts";
import type { Pocket } from "../light/light.ts";
import type { PictureBox } from "../light/region-rows.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { Card } from "./card.ts";
import type { MotifPart, MotifWish } from "./motif.ts";
import type { PanelKind } from "./panel.ts";
import type { Part } from "./part.ts";

/** What the kit asks of the window. Lengths mm; levels from 1. */
export interface WindowWish {
  readonly outline: number;
  readonly lip: number;
  readonly hinge: "left" | "right";
  readonly panel: PanelKind;
  /** Card of base frame, door and tab, where the kit states its colour. */
  readonly card?: Card | undefined;
}

/** The window that closes the opened book, part by part. */
export interface BookWindow {
  readonly wish: WindowWish;
  readonly frame: Part;
  readonly glazing: Part;
  readonly door: Part;
  readonly tab: Part;
  /** Drawn on paper, laid under the glazing. */
  readonly guide: Part;
  readonly holder: Part;
  /** In the order of the kit. */
  readonly motifs: readonly MotifPart[];
  /** String of the closure with its knot, mm. */
  readonly stringLength: number;
  /** Length of the base frame's outer outline, mm: what tape runs along. */
  readonly frameLength: number;
}

/** Where the window is fixed. */
export interface WindowBook {
  readonly map: LevelMap;
  readonly box: PictureBox;
  readonly curve: FrontCurve;
  readonly pocket: Pocket | undefined;
  /** Folded edges of the outer picture leaves at the head edge, where the holder sits, mm. */
  readonly holdWidth: number;
  readonly motifs: readonly MotifWish[];
}

/** All parts of a window in the order in which they are cut; none without a window. */
export function partsOf(window: BookWindow | undefined): Part[] {
  if (!window) return [];
  const { frame, glazing, door, tab, guide, holder, motifs } = window;
  return [frame, glazing, door, tab, guide, holder, ...motifs];
}
