import { rectangle } from "../geometry/area.ts";
import type { Ring } from "../geometry/point.ts";
import type { Kit, SheetSize } from "../kit/kit.ts";
import { layOutOnSizes, type SheetLayout } from "../packing/lay-out.ts";
import { nestParts } from "../packing/nest.ts";
import type { CornerPattern } from "../pattern/corner-pattern.ts";
import { cornerGaugeRing, cornerGaugeWidth, foldingCardSize } from "../plan/corner-gauge.ts";
import { gaugeSize } from "../plan/gauge-size.ts";
import type { Part } from "../window/part.ts";
import { partsOf } from "../window/window.ts";
import { type FittingSeat, isCutting } from "./fit-seats.ts";

/** A part with the seat that it is for. */
export interface SeatPart extends Part {
  readonly seat: number;
  /** Of a gauge that goes round: all seats that it is for, the stated one first. */
  readonly sharedBy?: readonly number[];
}

/** The seats that a part is for. */
export function seatsOfPart({ seat, sharedBy }: SeatPart): readonly number[] {
  return sharedBy ?? [seat];
}

/**
 * All parts that are cut for the class: each seat's, and one scoring gauge for seats whose lines are the same. Who folds by
 * corners holds the corner gauge at every leaf, so each such seat has its own.
 */
export function seatParts(seats: readonly FittingSeat[]): SeatPart[] {
  const cutting = seats.filter(isCutting);
  const gauges = [...Map.groupBy(cutting, linesOf).values()];
  return seats.flatMap(({ seat, pattern }) => {
    if (pattern.corner) return cornerParts(pattern).map((part) => ({ ...part, seat: seat.number }));
    const sharing = gauges.find(([first]) => first!.seat === seat);
    const own = partsOf(pattern.window).map((part) => ({ ...part, seat: seat.number }));
    return sharing ? [sharedGauge(sharing), ...own] : own;
  });
}

/** What a seat's gauge is told by: its kit, and where its lines are. */
function linesOf({ kit }: FittingSeat): string {
  return JSON.stringify([kit.slug, kit.gaugeLines, kit.levels.map(({ depth }) => depth)]);
}

/** As high as the lowest of its books, so that it lies flat in each; a higher leaf is marked in two goes. */
function sharedGauge(sharing: readonly FittingSeat[]): SeatPart {
  const numbers = sharing.map(({ seat }) => seat.number);
  const lowest = sharing.reduce((a, b) => (gaugeSize(b.kit).height < gaugeSize(a.kit).height ? b : a));
  const gauge = { ...gaugePart(lowest.kit), seat: numbers[0]! };
  return numbers.length > 1 ? { ...gauge, sharedBy: numbers } : gauge;
}

/** Parts of every seat laid together, each material apart, on the first of the class's sheets that takes them. */
export function classLayouts(parts: readonly SeatPart[], sheets: readonly SheetSize[]): SheetLayout<SeatPart>[] {
  return layOutOnSizes(parts, sheets, nestParts);
}

/** The card that a gauge is glued to. */
function gaugePart(kit: Kit): Part {
  return cardPart("scoring-gauge", boxRing(gaugeSize(kit)));
}

/** What a seat folds corners by. */
function cornerParts(pattern: CornerPattern): Part[] {
  const card = foldingCardSize(pattern);
  const gauge = cardPart("corner-gauge", cornerGaugeRing(cornerGaugeWidth(pattern)));
  return card ? [gauge, cardPart("folding-card", boxRing(card))] : [gauge];
}

function cardPart(kind: Part["kind"], ring: Ring): Part {
  return { id: kind, kind, material: "card", count: 1, frame: "own", outlines: [ring], scores: [], marks: [] };
}

function boxRing({ width, height }: { readonly width: number; readonly height: number }): Ring {
  return rectangle(0, 0, width, height);
}
