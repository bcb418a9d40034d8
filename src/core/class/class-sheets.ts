import type { Kit, SheetSize } from "../kit/kit.ts";
import { layOutOnSizes, type SheetLayout } from "../packing/lay-out.ts";
import { gaugeSize } from "../plan/gauge-size.ts";
import type { Part } from "../window/part.ts";
import { partsOf } from "../window/window.ts";
import type { FittingSeat } from "./fit-seats.ts";

/** A part with the seat that it is for. */
export interface SeatPart extends Part {
  readonly seat: number;
}

/** All parts that are cut for the class, each seat's scoring gauge among them. */
export function seatParts(seats: readonly FittingSeat[]): SeatPart[] {
  return seats.flatMap(({ seat, kit, pattern }) =>
    [gaugePart(kit), ...partsOf(pattern.window)].map((part) => ({ ...part, seat: seat.number })),
  );
}

/** Parts of every seat laid together, each material apart, on the first of the class's sheets that takes them. */
export function classLayouts(parts: readonly SeatPart[], sheets: readonly SheetSize[]): SheetLayout<SeatPart>[] {
  return layOutOnSizes(parts, sheets);
}

/** The card that a gauge is glued to. */
function gaugePart(kit: Kit): Part {
  const { width, height } = gaugeSize(kit);
  return {
    id: "scoring-gauge",
    kind: "scoring-gauge",
    material: "card",
    count: 1,
    frame: "own",
    outlines: [
      [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
    ],
    scores: [],
    marks: [],
  };
}
