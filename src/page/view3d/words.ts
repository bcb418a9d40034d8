import { toDegrees } from "../../core/units/angle.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import { formatSize } from "../../words/lengths.ts";
import { shapeAt } from "./pose.ts";

/** Less than this share from true is called true. */
const TRUE_WITHIN = 0.005;

/** What an opening (radians) does to the picture: its width, how far that is from true, and what stands against it. */
export function openingWords(data: RoundData, opening: number, units: UnitSystem): string {
  const own = isOwn(data, opening);
  const { width, stretch } = shapeAt(data, own ? data.fit.opening : opening);
  const place = data.fit.view === "along" ? "wide along its front" : "wide";
  const sentences = [
    `Opening ${degreesText(own ? data.fit.opening : opening)}${own ? ", the kit's own" : ""}: the picture is ${formatSize(width, units)} ${place}, ${shapeWords(stretch)}.`,
  ];
  if (opening < data.fit.restingOpening)
    sentences.push(
      `The folded leaves hold this book open to about ${Math.round(toDegrees(data.fit.restingOpening))}° or more.`,
    );
  if (!own && data.insert)
    sentences.push(
      `The window is cut for the kit's own opening and ${fitsWindow(data, opening) ? "does not fit here" : "is left out here"}.`,
    );
  return sentences.join(" ");
}

/** Whether a slider that moves in whole degrees stands at the kit's opening. */
export function isOwn(data: RoundData, opening: number): boolean {
  return Math.abs(toDegrees(opening - data.fit.opening)) < 0.5;
}

/** Whether there is room for the window between the boards: not where the book is less open than the kit wants. */
export function fitsWindow(data: RoundData, opening: number): boolean {
  return isOwn(data, opening) || opening > data.fit.opening;
}

/** Width over true width in words: 1.32 is 32 % wider than true. */
export function shapeWords(stretch: number): string {
  if (Math.abs(stretch - 1) < TRUE_WITHIN) return "its true shape";
  const percent = Math.abs(stretch - 1) * 100;
  const amount = percent < 10 ? String(Number(percent.toFixed(1))) : percent.toFixed(0);
  return stretch > 1
    ? `${amount}\u00a0% wider than true: a circle becomes a lying oval`
    : `${amount}\u00a0% narrower than true: a circle becomes a standing oval`;
}

function degreesText(radians: number): string {
  return `${Math.round(toDegrees(radians))}°`;
}
