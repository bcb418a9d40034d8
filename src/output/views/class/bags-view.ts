import { bagsOf } from "../../../core/class/bags.ts";
import { type SeatPart, seatsOfPart } from "../../../core/class/class-sheets.ts";
import type { NamedSheet } from "../../../core/class/preparation.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import { seatsText } from "../../../words/seats.ts";

/** What lies in a seat's bag, as text. */
export interface BagView {
  readonly seat: number;
  readonly parts: readonly string[];
  /** Where its gauge is, if not here; else empty. */
  readonly gauge: string;
}

export function bagViews(parts: readonly SeatPart[], sheets: readonly NamedSheet[]): BagView[] {
  return bagsOf(parts, sheets).map(({ seat, parts: own, gaugeWith }) => ({
    seat,
    parts: own.map(({ part, sheets: names }) => {
      const from = names.length > 0 ? rowText(names) : say.papersBagNoSheet();
      const said = { part: partName(part), sheets: from };
      return part.count > 1 ? say.papersBagPartMany({ ...said, count: part.count }) : say.papersBagPart(said);
    }),
    gauge: gaugeWith === undefined ? "" : say.papersBagGaugeWith({ seat: gaugeWith }),
  }));
}

/** Which gauges go round, each in a sentence or two, and what becomes of their card. */
export function sharedGauges(parts: readonly SeatPart[]): string[] {
  const round = parts
    .filter(({ sharedBy }) => sharedBy !== undefined)
    .map((part) => say.papersGaugeRound({ seats: seatsText(seatsOfPart(part)) }));
  return parts.some(({ kind }) => kind === "scoring-gauge") ? [...round, say.papersGaugeCard()] : round;
}
