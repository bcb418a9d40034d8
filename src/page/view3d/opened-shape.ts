import { toDegrees } from "../../core/units/angle.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import type { OpenedShape } from "../../words/round.ts";
import { shapeAt } from "./pose.ts";

/** What an opening (radians) does to the picture and to the window. */
export function openedShape(data: RoundData, opening: number): OpenedShape {
  const own = isOwn(data, opening);
  const { view, restingOpening } = data.fit;
  return {
    opening: own ? data.fit.opening : opening,
    own,
    ...shapeAt(data, own ? data.fit.opening : opening),
    along: view === "along",
    heldOpenTo: opening < restingOpening ? restingOpening : undefined,
    window: own || !data.insert ? undefined : fitsWindow(data, opening) ? "misfit" : "hidden",
  };
}

/** Whether a slider that moves in whole degrees stands at the kit's opening. */
export function isOwn(data: RoundData, opening: number): boolean {
  return Math.abs(toDegrees(opening - data.fit.opening)) < 0.5;
}

/** Whether there is room for the window between the boards: not where the book is less open than the kit wants. */
export function fitsWindow(data: RoundData, opening: number): boolean {
  return isOwn(data, opening) || opening > data.fit.opening;
}
