import type { Kit } from "../../../core/kit/kit.ts";
import { type GaugeLine, gaugeLines } from "../../../core/plan/gauge-lines.ts";
import { gaugeSize } from "../../../core/plan/gauge-size.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { shortName } from "../../../words/short-name.ts";
import { boxPath, uprightPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

const TOP = 18;

/** Room for the list of lines beside the gauge, mm. */
const LIST_ROOM = 50;

/**
 * A scoring gauge to cut out at true scale: its left edge goes flush with the fore-edge, each numbered line stands at its
 * distance from it. Lines of the kit's levels are drawn full and carry the level's name; the gauge's other lines are thin.
 */
export function gaugeSheet(kit: Kit): string {
  const lines = gaugeLines(kit);
  const left = BAR_ROOM.left + 14;
  const { width, height } = gaugeSize(kit);
  return [
    tag("path", { d: boxPath(left, TOP, width, height, 3), fill: "none", stroke: "#000", "stroke-width": 0.35 }),
    text(0, 0, say.drawGaugeFlush(), {
      "font-size": 3.2,
      transform: `translate(${num(left - 2)} ${num(TOP + height / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
    ...lines.map((line, i) => lineOnGauge(line, i, left, height, kit.units)),
    lineList(lines, left + width + 10, kit.units),
    fitted(left, TOP - 6, say.drawGaugeMake(), 3),
    fitted(left, TOP - 2, say.drawGaugeDashed(), 3),
    calibration(kit.units),
  ].join("");
}

/** Words on the gauge or in the list beside it, which are drawn smaller where their room is short of them; mm. */
export interface GaugeWords {
  /** Numbers of the levels that they name. */
  readonly levels: readonly number[];
  readonly words: string;
  readonly room: number;
  readonly size: number;
}

/** All words of the gauge that name levels. */
export function gaugeWords(kit: Kit): GaugeWords[] {
  const { width, height } = gaugeSize(kit);
  const listLeft = BAR_ROOM.left + 14 + width + 10;
  const listed = listLeft <= SHEET.width - LIST_ROOM;
  return gaugeLines(kit).flatMap((line, i) => {
    const levels = line.levels.map(({ number }) => number);
    if (levels.length === 0) return [];
    const upright = { levels, words: lineText(line, kit.units), room: footOf(i, height), size: USED.size };
    const row = { levels, words: rowOf(line, kit.units), room: SHEET.width - listLeft, size: ROW_SIZE };
    return listed ? [upright, row] : [upright];
  });
}

/** Letters of a line that a level uses, of another line, and of the list. */
const USED = { size: 3.4, weight: 600 } as const;
const UNUSED = { size: 2.8, weight: 400 } as const;
const ROW_SIZE = 3.8;

/** How far below the gauge's top the words of a line begin: those of neighbours at different heights. */
function footOf(index: number, height: number): number {
  return Math.min(65 + (index % 2) * 60, height - 4);
}

function lineOnGauge(line: GaugeLine, index: number, left: number, height: number, units: UnitSystem): string {
  const x = left + line.depth;
  const used = line.levels.length > 0;
  const foot = footOf(index, height);
  const { size, weight } = used ? USED : UNUSED;
  const words = lineText(line, units);
  return [
    tag("path", {
      d: uprightPath([x, TOP], height, 3),
      fill: "none",
      stroke: "#000",
      "stroke-width": used ? 0.3 : 0.15,
      "stroke-dasharray": used ? "3.6 0.9" : "1.8 0.9",
    }),
    ...holes(x, height, used),
    text(0, 0, words, {
      "font-size": sizeWithin(foot, words, size),
      "font-weight": weight,
      transform: `translate(${num(x + (used ? 3.6 : 3.1))} ${num(TOP + foot)}) rotate(-90)`,
    }),
    ...(used ? [levelNumbers(line, x, TOP + height + 4.4)] : []),
  ].join("");
}

/** Holes to prick along a line. */
function holes(x: number, height: number, used: boolean): string[] {
  return Array.from({ length: Math.floor(height / 20) }, (_, i) =>
    tag("circle", {
      cx: x,
      cy: TOP + 10 + i * 20,
      r: 0.5,
      fill: used ? "#000" : "none",
      stroke: "#000",
      "stroke-width": 0.15,
    }),
  );
}

function levelNumbers({ levels }: GaugeLine, x: number, y: number): string {
  return text(x, y, rowText(levels.map(({ number }) => String(number))), {
    "font-size": 4.4,
    "font-weight": 700,
    "text-anchor": "middle",
  });
}

function lineText(line: GaugeLine, units: UnitSystem): string {
  const depth = formatSize(line.depth, units);
  const levels = levelsText(line);
  if (line.number === undefined) return say.drawGaugeOwnLine({ levels, depth });
  return line.levels.length > 0
    ? say.drawGaugeUsedLine({ levels, line: line.number, depth })
    : say.drawGaugeLine({ line: line.number, depth });
}

function levelsText({ levels }: GaugeLine): string {
  return rowText(levels.map(({ number, name }) => say.drawGaugeLevel({ number, level: shortName(name) })));
}

/** The gauge's lines as a list beside it, where the sheet has room. */
function lineList(lines: readonly GaugeLine[], left: number, units: UnitSystem): string {
  if (left > SHEET.width - LIST_ROOM) return "";
  return [
    fitted(left, TOP + 6, say.drawGaugeList(), 4.4, 600),
    fitted(left, TOP + 10.5, say.drawGaugeListNote(), 3),
    ...lines.map((line, i) =>
      fitted(left, TOP + 16 + i * 7, rowOf(line, units), ROW_SIZE, line.levels.length > 0 ? 600 : 400),
    ),
  ].join("");
}

/** Words that end within the sheet, smaller where they must be. */
function fitted(x: number, y: number, words: string, size: number, weight?: number): string {
  return text(x, y, words, { "font-size": sizeWithin(SHEET.width - x, words, size), "font-weight": weight });
}

function rowOf(line: GaugeLine, units: UnitSystem): string {
  const depth = formatSize(line.depth, units);
  const levels = levelsText(line);
  if (line.number === undefined) return say.drawGaugeListOwn({ levels, depth });
  return line.levels.length > 0
    ? say.drawGaugeListUsed({ levels, line: line.number, depth })
    : say.drawGaugeListUnused({ line: line.number, depth });
}
