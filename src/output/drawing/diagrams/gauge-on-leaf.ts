import type { Kit } from "../../../core/kit/kit.ts";
import type { GaugeLine } from "../../../core/plan/gauge-lines.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { shortName } from "../../../words/short-name.ts";
import { wordsWidth } from "../words-width.ts";
import { CARD, FAINT, type Look, PAPER, SCORE, SMALL, TEXT, THIN, torn } from "./ink.ts";
import type { Pen } from "./pen.ts";

const FORE_EDGE = 70;
const GAUGE = { top: 8, foot: 36 };
const LEAF = { top: 3, foot: 43 };

/** Card beyond the deepest line, mm. */
const GRIP = 12;

/** Least distance between upright words. */
const APART = 3.4;

/** The gauge on the page with a bone folder on the deepest level's line. */
export function gaugeOnLeaf(pen: Pen, kit: Kit, lines: readonly GaugeLine[]): string {
  const deepest = Math.max(...lines.map((line) => line.depth));
  const scale = Math.min(1.5, 58 / (deepest + GRIP));
  const x = (depth: number): number => FORE_EDGE - depth * scale;
  const left = x(deepest + GRIP);
  const scored = x(kit.levels.at(-1)!.depth);
  let free = FORE_EDGE + APART;
  const drawn = lines.map((line) => {
    const room = free - x(line.depth) >= APART;
    if (room) free = x(line.depth);
    return lineOnGauge(pen, line, x(line.depth), room, kit);
  });
  return [
    pen.shape([[FORE_EDGE, LEAF.top], [FORE_EDGE, LEAF.foot], ...torn(3, LEAF.foot, LEAF.top)], PAPER, THIN),
    pen.segment(FORE_EDGE, LEAF.top, FORE_EDGE, LEAF.foot, THIN),
    pen.box([left, GAUGE.top], [FORE_EDGE, GAUGE.foot], CARD),
    ...drawn,
    pen.upright([left + 2.6, (GAUGE.top + GAUGE.foot) / 2], say.drawScoringGauge(), { bold: true }),
    boneFolder(pen, scored),
    pen.upright([76.5, (LEAF.top + LEAF.foot) / 2], say.drawScoringFlush()),
    pen.arrow(74.6, 30, FORE_EDGE + 0.6, 30),
    pen.arrow(74.6, 14, FORE_EDGE + 0.6, 14),
  ].join("");
}

/** A line in use is dashed and says its level; the gauge's other lines are faint. */
function lineOnGauge(pen: Pen, line: GaugeLine, x: number, room: boolean, kit: Kit): string {
  const used = line.levels.length > 0;
  const words = lineWords(line, kit.units, GAUGE.foot - GAUGE.top - 7);
  const look: Look = used ? SCORE : FAINT;
  return [
    pen.segment(x, GAUGE.top, x, used ? LEAF.foot : GAUGE.foot, look),
    room
      ? pen.upright([x + 2.3, (GAUGE.top + GAUGE.foot) / 2 + 2.6], words, { bold: used, size: used ? TEXT : SMALL })
      : "",
    room && line.number !== undefined ? pen.badge([x, GAUGE.top + 2.6], String(line.number)) : "",
  ].join("");
}

/** A line's distance and the first of its levels, where both have room. */
function lineWords({ depth, levels }: GaugeLine, units: UnitSystem, room: number): string {
  const size = formatSize(depth, units);
  const first = levels[0];
  const long = first ? say.drawScoringLevel({ depth: size, level: shortName(first.name) }) : size;
  return wordsWidth(long, TEXT) <= room ? long : size;
}

/** The blunt tool on a line, with the way it goes. */
function boneFolder(pen: Pen, x: number): string {
  return [
    pen.shape(
      [
        [x, 39.5],
        [x - 2.4, 45.4],
        [x - 7, 50.5],
        [x - 8.6, 49],
        [x - 4.6, 44],
      ],
      "#ffffff",
      THIN,
    ),
    pen.wrapped([x - 9.6, 47.4], say.drawScoringBoneFolder(), x - 8.6, { anchor: "end" }),
  ].join("");
}
