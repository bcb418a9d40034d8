import { boxOf } from "../../../core/geometry/box.ts";
import { BOUNDS } from "../../../core/kit/bounds.ts";
import { tidy } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { MotifPart } from "../../../core/window/motif.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import type { Shown } from "./shown.ts";
import { lengthAt, type Wish } from "./wish.ts";

/** What the window is cut along and how it hangs, and one motif of it; none of a kit without one. */
export function doorFields(shown: Shown, motif: number | undefined): FigureField[] {
  const { kit } = shown;
  const { insert, levels } = kit;
  if (!insert) return [];
  const choice = (key: string, label: string, chosen: string, options: Readonly<Record<string, string>>): FigureField => ({
    name: `insert-${key}`,
    label,
    options: Object.entries(options).map(([value, name]) => ({ value, label: name })),
    chosen,
    wishes: (value) => [{ at: ["insert", key], value }],
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
      wishes: (mm) => [lengthAt(["insert", "lip"], mm)],
    },
    choice("hinge", say.deskKitDoorHinge(), insert.hinge, { left: say.deskKitDoorLeft(), right: say.deskKitDoorRight() }),
    choice("panel", say.deskKitDoorPanel(), insert.panel, { wrap: say.deskKitDoorWrap(), flat: say.deskKitDoorFlat() }),
    ...(motif === undefined ? [] : motifFields(shown, motif)),
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
export function placeWish({ kit }: Pick<Shown, "kit">, motif: number, across: number, down: number): Wish {
  const step = rulerStep(kit.units, "fine");
  const onRuler = (mm: number): number => tidy(Math.round(mm / step) * step);
  return { at: ["insert", "motifs", motif, "at"], value: [{ mm: onRuler(across) }, { mm: onRuler(down) }] };
}

function motifFields(shown: Shown, motif: number): FigureField[] {
  const window = shown.pattern.window;
  const part = window?.motifs[motif];
  if (!window || !part) return [];
  const seat = seatOf(window, part);
  const at = ["insert", "motifs", motif] as const;
  return [
    {
      name: "motif-across",
      label: say.deskKitMotifAcross(),
      bounds: BOUNDS.motifPlace,
      figure: seat.across,
      wishes: (mm) => [placeWish(shown, motif, mm, seat.down)],
    },
    {
      name: "motif-down",
      label: say.deskKitMotifDown(),
      bounds: BOUNDS.motifPlace,
      figure: seat.down,
      wishes: (mm) => [placeWish(shown, motif, seat.across, mm)],
    },
    {
      name: "motif-width",
      label: say.deskKitMotifWidth(),
      bounds: BOUNDS.motifSide,
      figure: seat.width,
      wishes: (mm) => [lengthAt([...at, "width"], mm), { at: [...at, "height"], value: undefined }],
    },
  ];
}
