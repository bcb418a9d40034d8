import { type Figure, LINES, type Line, type LineId, shareOf, turnsOf, type Unit } from "./lines.ts";

const DECIMALS: Readonly<Record<Unit, number>> = { times: 2, "%": 1, ms: 0, s: 2, MiB: 0, MB: 2, kB: 0 };

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

/** A figure in its unit: `1.5 times`, `12 ms`. */
export function inUnit(value: number, unit: Unit): string {
  if (!Number.isFinite(value)) return "did not end";
  const text = value.toLocaleString("en", { maximumFractionDigits: value >= 100 ? 0 : DECIMALS[unit] });
  return unit === "%" ? `${text} %` : `${text} ${unit}`;
}

/** Three digits are what turns are true to. */
function inTurns(turns: number): string {
  return Number.isFinite(turns) ? turns.toLocaleString("en", { maximumSignificantDigits: 3 }) : "–";
}

/** A goal as it is written: `at most 34 ms`. */
export function goalOf({ goal, unit, more }: Line): string {
  return `${more ? "at least" : "at most"} ${inUnit(goal, unit)}`;
}

/** Lines of the table in Markdown, in the table's order. */
export function tableOf(figures: readonly Figure[]): string {
  const order = Object.keys(LINES) as LineId[];
  const rows = figures
    .toSorted((a, b) => order.indexOf(a.line) - order.indexOf(b.line))
    .map((figure) => {
      const line: Line = LINES[figure.line];
      const held = isHeld(figure) ? "held" : "lost";
      const turns = turnsOf(figure);
      const cells = [
        line.work,
        goalOf(line),
        inUnit(figure.value, line.unit),
        turns === undefined ? "–" : inTurns(turns),
        held,
      ];
      return `| ${cells.join(" | ")} |`;
    });
  return ["| work | goal | measured | turns | the goal is |", "| --- | --- | --- | --- | --- |", ...rows].join("\n");
}
