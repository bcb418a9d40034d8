import { gaugeSize } from "../../output/drawing/gauge-sheet.ts";
import type { Kit, SheetSize } from "../kit/kit.ts";
import { type Layout, layOutOnSizes } from "../packing/lay-out.ts";
import type { Part } from "../window/part.ts";
import type { FittingSeat } from "./fit-seats.ts";

/** A seat's part with the seat it is for; its name begins with the seat. */
export interface SeatPart {
  readonly seat: number;
  /** The part's own name: `base frame`. */
  readonly kind: string;
  readonly part: Part;
}

/** All parts that are cut for the class, each seat's scoring gauge among them. */
export function seatParts(seats: readonly FittingSeat[]): SeatPart[] {
  return seats.flatMap(({ seat, kit, pattern }) =>
    [gaugePart(kit), ...(pattern.insert?.parts ?? [])].map((part) => ({
      seat: seat.number,
      kind: part.name,
      part: { ...part, name: `seat ${seat.number}: ${part.name}` },
    })),
  );
}

/** Parts of every seat laid together, each material apart, on the first of the class's sheets that takes them. */
export function classLayouts(parts: readonly SeatPart[], sheets: readonly SheetSize[]): Layout[] {
  return layOutOnSizes(
    parts.map(({ part }) => part),
    sheets,
  );
}

/** The card that a gauge is glued to. */
function gaugePart(kit: Kit): Part {
  const { width, height } = gaugeSize(kit);
  return {
    name: "scoring gauge",
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
    use: "glue the packet's gauge to it",
  };
}
