import { boxOf } from "../../../core/geometry/box.ts";
import { BOUNDS } from "../../../core/kit/bounds.ts";
import { roundTo } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { MotifPart } from "../../../core/window/motif.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import { lengthAt } from "./length-at.ts";
import type { Shown } from "./shown.ts";

/** What the window is cut along and how it hangs; none of a kit without one. */
export function doorFields({ kit }: Shown): FigureField[] {
  const { insert, levels } = kit;
  if (!insert) return [];
  const choice = (
    key: string,
    label: string,
    chosen: string,
    options: Readonly<Record<string, string>>,
  ): FigureField => ({
    name: `insert-${key}`,
    label,
    options: Object.entries(options).map(([value, name]) => ({ value, label: name })),
    chosen,
    edits: (value) => [{ at: ["insert", key], value }],
  });
  return [
    choice(
      "outline",
      say.deskKitDoorOutline(),
      levels[insert.outline - 1]!.name,
      Object.fromEntries(levels.map(({ name }) => [name, name])),
    ),
    {
      name: "insert-lip",
      label: say.deskKitDoorLip(),
      bounds: BOUNDS.lip,
      figure: insert.lip,
      edits: (mm) => [lengthAt(["insert", "lip"], mm)],
    },
    choice("hinge", say.deskKitDoorHinge(), insert.hinge, {
      left: say.deskKitDoorLeft(),
      right: say.deskKitDoorRight(),
    }),
    choice("panel", say.deskKitDoorPanel(), insert.panel, { wrap: say.deskKitDoorWrap(), flat: say.deskKitDoorFlat() }),
  ];
}

/** Where a motif lies on the closed window, and how wide it is, mm from the frame's left and upper edge. */
export interface MotifSeat {
  readonly across: number;
  readonly down: number;
  readonly width: number;
}

export function seatOf(window: BookWindow, motif: MotifPart): MotifSeat {
  const frame = boxOf(window.frame.outlines);
  const box = boxOf(motif.outlines);
  const [left, top] = motif.seat;
  return {
    across: left + (box.left + box.right) / 2 - frame.left,
    down: top + (box.top + box.bottom) / 2 - frame.top,
    width: box.right - box.left,
  };
}

/** Puts the middle of a motif at a place. */
export function placeEdits({ kit }: Pick<Shown, "kit">, motif: number, across: number, down: number): Edit[] {
  const step = rulerStep(kit.units, "fine");
  const onRuler = (mm: number): number => roundTo(mm, step);
  return [across, down].map((mm, i) => lengthAt(["insert", "motifs", motif, "at", i], onRuler(mm)));
}

/** Where one motif lies on the window, and how wide it is; none where it is not there. */
export function motifFields(shown: Shown, motif: number | undefined): FigureField[] {
  const window = shown.pattern.window;
  const part = motif === undefined ? undefined : window?.motifs[motif];
  if (!window || !part || motif === undefined) return [];
  const seat = seatOf(window, part);
  const at = ["insert", "motifs", motif] as const;
  return [
    {
      name: "motif-across",
      label: say.deskKitMotifAcross(),
      bounds: BOUNDS.motifPlace,
      figure: seat.across,
      edits: (mm) => placeEdits(shown, motif, mm, seat.down),
    },
    {
      name: "motif-down",
      label: say.deskKitMotifDown(),
      bounds: BOUNDS.motifPlace,
      figure: seat.down,
      edits: (mm) => placeEdits(shown, motif, seat.across, mm),
    },
    {
      name: "motif-width",
      label: say.deskKitMotifWidth(),
      bounds: BOUNDS.motifSide,
      figure: seat.width,
      edits: (mm) => [lengthAt([...at, "width"], mm), { at: [...at, "height"], value: undefined }],
    },
  ];
}
