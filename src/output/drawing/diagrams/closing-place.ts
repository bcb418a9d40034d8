import { boxOf } from "../../../core/geometry/box.ts";
import { levelCrossings } from "../../../core/geometry/crossings.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import type { Look } from "./ink.ts";

/** Where the closure's things are from the middle of the button, mm; `out` points away from the hinge. */
export interface ClosingPlace {
  readonly button: readonly [number, number];
  /** From the button to the frame's edge, and from that edge to the tab's hole and end. */
  readonly edge: number;
  readonly hole: number;
  readonly end: number;
  readonly halfTab: number;
  readonly out: 1 | -1;
}

/** Where the button stands in both drawings, its radius there, and how far the tab lies under the frame, mm. */
export const BUTTON = { x: 26, radius: 4.2 } as const;
export const TAB_GLUED = 12;

export const STRING: Look = { fill: "none", stroke: "#000", "stroke-width": "0.5" };

export function closingPlace({ wish, frame, door, tab }: BookWindow): ClosingPlace {
  const cross = door.marks.find((mark) => mark.kind === "button")!.line;
  const button = [(cross[0]![0] + cross[1]![0]) / 2, cross[0]![1]] as const;
  const out = wish.hinge === "left" ? 1 : -1;
  const glued = tab.marks[0]!.line[0]![0];
  const hole = boxOf(tab.outlines.slice(1));
  const box = boxOf(tab.outlines);
  return {
    button,
    out,
    edge: Math.max(...levelCrossings(frame.outlines, button[1]).map((x) => (x - button[0]) * out)),
    hole: (hole.left + hole.right) / 2 - glued,
    end: box.right - glued,
    halfTab: (box.bottom - box.top) / 2,
  };
}
