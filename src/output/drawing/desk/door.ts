import { type Box, boxOf } from "../../../core/geometry/box.ts";
import { curveOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { setOutlines } from "../../../core/window/motif.ts";
import { toFront } from "../../../core/window/panel.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import type { FigureArea } from "../figure.ts";
import { paperTone } from "../front/tone.ts";
import { closedWindow } from "../front/window.ts";
import { tag } from "../svg-text.ts";

/** Room round the frame, a share of its greater side. */
const ROUND = 0.06;

/** The closed window by itself, over the paper of the book: what is shown of it, and where its motifs lie as they are seen. Lengths mm, as the sheet has them. */
export interface DoorShown {
  readonly area: FigureArea;
  readonly drawn: string;
  readonly motifs: readonly Box[];
}

export function doorDrawing(pattern: Pattern, window: BookWindow): DoorShown {
  const curve = curveOf(pattern);
  const { panel } = window.wish;
  const frame = boxOf(toFront(window.frame.outlines, curve, panel));
  const beside = ROUND * Math.max(frame.right - frame.left, frame.bottom - frame.top);
  const area = {
    left: frame.left - beside,
    top: frame.top - beside,
    width: frame.right - frame.left + 2 * beside,
    height: frame.bottom - frame.top + 2 * beside,
  };
  const { left, top, width, height } = area;
  const paper = tag("rect", { x: left, y: top, width, height, fill: paperTone(0.35, 1) });
  return {
    area,
    drawn: paper + closedWindow(window, curve, "day"),
    motifs: window.motifs.map((motif) => boxOf(toFront(setOutlines(motif), curve, panel))),
  };
}
