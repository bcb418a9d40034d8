import { type Figure, shareOf, turnsOf } from "./figure.ts";
import type { Line, Unit } from "./line.ts";
import { LINES, type LineId } from "./lines.ts";

/** How much worse than what is kept a line may be, as a share. */
const SLACK = 1 / 3;

export function isHeld({ line, value }: Figure): boolean {
  const { goal, more }: Line = LINES[line];
  return more ? value >= goal : value <= goal;
}

/** Whether a figure is worse than a kept one by more than a third; what never ended before cannot get worse. */
export function isWorse(now: Figure, kept: Figure): boolean {
  const { more }: Line = LINES[now.line];
  const [share, before] = [shareOf(now), shareOf(kept)];
  return more ? share < before * (1 - SLACK) : share > before * (1 + SLACK);
}

/** A figure in its unit, with the three digits that it is true to: `1.5 times`, `12 ms`. */
export function inUnit(value: number, unit: Unit): string {
  if (!Number.isFinite(value)) return "did not end";
  return inIts(unit, value.toLocaleString("en", { maximumSignificantDigits: 3 }));
}

/** A number with its unit: no space stands before a per cent sign. */
function inIts(unit: Unit, number: string): string {
  return unit === "%" ? `${number}%` : `${number} ${unit}`;
}

/** A goal as it is written: `at most 32 ms`. */
function goalOf({ goal, unit, more }: Line): string {
  return `${more ? "at least" : "at most"} ${inIts(unit, goal.toLocaleString("en"))}`;
}

/** What was measured, and whether that holds the goal: `12 ms, or 24.8 turns: lost`. */
function measuredOf(figure: Figure): string {
  const turns = turnsOf(figure);
  const own = inUnit(figure.value, LINES[figure.line].unit);
  const also = turns === undefined || !Number.isFinite(turns) ? "" : `, or ${inUnit(turns, "turns")}`;
  return `${own}${also}: ${isHeld(figure) ? "held" : "lost"}`;
}

/** Lines of the table in Markdown, in the table's order. */
export function tableOf(figures: readonly Figure[]): string {
  const order = Object.keys(LINES) as LineId[];
  const rows = figures
    .toSorted((a, b) => order.indexOf(a.line) - order.indexOf(b.line))
    .map((figure) => `| ${LINES[figure.line].work} | ${goalOf(LINES[figure.line])} | ${measuredOf(figure)} |`);
  return ["| work | goal | measured |", "| --- | --- | --- |", ...rows].join("\n");
}
