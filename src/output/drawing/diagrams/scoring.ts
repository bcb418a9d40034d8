import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { type Batch, batchesOf } from "../../../core/plan/batches.ts";
import { stepFor } from "../../../core/units/length.ts";
import { formatLength, formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import {
  BOARD,
  CARD,
  CUT,
  diagram,
  EDGE_ON,
  FAINT,
  type Look,
  PAPER,
  SCORE,
  SMALL,
  TEXT,
  THIN,
  torn,
  wordsWidth,
} from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

/** A line of the gauge, with the levels that are folded at it. */
interface GaugeLine {
  readonly number: number | undefined;
  readonly depth: number;
  readonly levels: readonly string[];
}

const FORE_EDGE = 70;
const GAUGE = { top: 8, foot: 36 };
const LEAF = { top: 3, foot: 43 };
/** Card beyond the deepest line, mm. */
const GRIP = 12;
/** Least distance between upright words. */
const APART = 3.4;

/** The gauge flush with the fore-edge, its lines with their distances, and the packing that keeps the working side level. */
export function scoring(kit: Kit, pattern: Pattern): Figure {
  const lines = gaugeLines(kit);
  const batches = batchesOf(pattern, kit.fit.batch, kit.gaugeTile);
  const batch = batches[Math.floor(batches.length / 2)]!;
  const packing = formatLength(batch.packing, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
  const distances = lines
    .map(
      (line) =>
        `${line.number === undefined ? "" : `line ${line.number}, `}${formatSize(line.depth, kit.units)}${line.levels.length > 0 ? ` for ${line.levels.join(" and ")}` : ""}`,
    )
    .join("; ");
  const label = `Scoring. Above: the gauge lies on the page, its edge flush with the fore-edge; its lines, measured from the fore-edge: ${distances}. Press along a line with a bone folder. Below: the open book from the tail; the working side has sunk, so packing goes under it and the gauge lies level, for example ${packing} at leaf ${batch.first.leaf}. Thickness is exaggerated.`;
  const pen = penFor(kit.book.direction);
  return diagram(73, label, [gaugeOnLeaf(pen, kit, lines), supportBelow(pen, kit, batch, packing)]);
}

function gaugeLines(kit: Kit): GaugeLine[] {
  const named = (wanted: (line: number | undefined, depth: number) => boolean): string[] =>
    kit.levels.filter((level) => wanted(level.line, level.depth)).map((level) => level.name);
  const own = kit.gaugeLines.map((depth, i) => ({ number: i + 1, depth, levels: named((line) => line === i + 1) }));
  const free = kit.levels
    .filter((level) => level.line === undefined)
    .map((level) => ({ number: undefined, depth: level.depth, levels: [level.name] }));
  return [...own, ...free].sort((a, b) => a.depth - b.depth);
}

function gaugeOnLeaf(pen: Pen, kit: Kit, lines: readonly GaugeLine[]): string {
  const deepest = Math.max(...lines.map((line) => line.depth));
  const scale = Math.min(1.5, 58 / (deepest + GRIP));
  const x = (depth: number): number => FORE_EDGE - depth * scale;
  const left = x(deepest + GRIP);
  const scored = x(kit.levels.at(-1)!.depth);
  let free = FORE_EDGE + APART;
  const drawn = lines.map((line) => {
    const room = free - x(line.depth) >= APART;
    if (room) free = x(line.depth);
    return gaugeLine(pen, line, x(line.depth), room, kit);
  });
  return [
    pen.shape([[FORE_EDGE, LEAF.top], [FORE_EDGE, LEAF.foot], ...torn(3, LEAF.foot, LEAF.top)], PAPER, THIN),
    pen.segment(FORE_EDGE, LEAF.top, FORE_EDGE, LEAF.foot, CUT),
    pen.box([left, GAUGE.top], [FORE_EDGE, GAUGE.foot], CARD, CUT),
    ...drawn,
    pen.upright([left + 2.6, (GAUGE.top + GAUGE.foot) / 2], "gauge", { bold: true }),
    boneFolder(pen, scored),
    pen.segment(FORE_EDGE, GAUGE.top, FORE_EDGE, GAUGE.foot, { ...CUT, "stroke-width": "1" }),
    pen.upright([76.5, (LEAF.top + LEAF.foot) / 2], "flush with the fore-edge"),
    pen.arrow(74.6, 30, FORE_EDGE + 0.6, 30),
    pen.arrow(74.6, 14, FORE_EDGE + 0.6, 14),
  ].join("");
}

/** A line in use is dashed and says its level; the gauge's other lines are faint. */
function gaugeLine(pen: Pen, line: GaugeLine, x: number, room: boolean, kit: Kit): string {
  const used = line.levels.length > 0;
  const long = [formatSize(line.depth, kit.units), ...line.levels.slice(0, 1)].join(" ");
  const space = GAUGE.foot - GAUGE.top - 7;
  const words = wordsWidth(long, TEXT) <= space ? long : formatSize(line.depth, kit.units);
  const look: Look = used ? SCORE : FAINT;
  return [
    pen.segment(x, GAUGE.top, x, used ? LEAF.foot : GAUGE.foot, look),
    room
      ? pen.upright([x + 2.3, (GAUGE.top + GAUGE.foot) / 2 + 2.6], words, { bold: used, size: used ? TEXT : SMALL })
      : "",
    room && line.number !== undefined ? pen.badge([x, GAUGE.top + 2.6], String(line.number)) : "",
  ].join("");
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
    pen.words([x - 9.6, 48.4], "bone folder", { anchor: "end" }),
  ].join("");
}

const TABLE = 67;
const BOOK_TOP = 54.5;
const SPINE = 41;
const REACH = 31;

/** The open book from the tail: turned leaves on one side, packing under the other. */
function supportBelow(pen: Pen, kit: Kit, batch: Batch, packing: string): string {
  const board = 1;
  const full = TABLE - BOOK_TOP - board;
  const gone = Math.max(1.2, (full * (batch.first.leaf - 1)) / kit.book.leaves);
  const right = SPINE + REACH;
  const lifted = TABLE - gone;
  return [
    pen.segment(2, TABLE, 78, TABLE, EDGE_ON),
    pen.box([SPINE - REACH, TABLE - board], [SPINE - 0.3, TABLE], BOARD, THIN),
    pen.box([SPINE - REACH, TABLE - board - gone], [SPINE - 0.3, TABLE - board], PAPER, THIN),
    pen.box([SPINE + 0.3, lifted], [right, TABLE], GROUND, THIN),
    pen.box([SPINE + 0.3, lifted - board], [right, lifted], BOARD, THIN),
    pen.box([SPINE + 0.3, BOOK_TOP], [right, lifted - board], PAPER, THIN),
    pen.segment(SPINE + 10, BOOK_TOP - 0.5, right, BOOK_TOP - 0.5, { ...EDGE_ON, "stroke-width": "0.9" }),
    pen.words([SPINE - REACH, Math.min(BOOK_TOP + 2.4, TABLE - board - gone - 1)], "turned leaves"),
    pen.words([78, 71.2], `packing ${packing} before leaf ${batch.first.leaf}`, { anchor: "end", bold: true }),
    pen.leader([
      [right + 4, 68.4],
      [right + 4, lifted + gone / 2],
      [right - 2, lifted + gone / 2],
    ]),
    pen.words([78, 51.6], "gauge lies level", { anchor: "end" }),
    pen.words([1, 71.2], "seen from the tail"),
  ].join("");
}

const GROUND = "#e2e2e2";
