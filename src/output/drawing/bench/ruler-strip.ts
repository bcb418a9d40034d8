import { type Graduation, graduations } from "../../../core/units/graduations.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { formatNumber } from "../../../words/lengths.ts";
import { ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";

/** The maker's ruler: its units, and how far its finest lines are apart, mm. */
export interface Ruler {
  readonly units: UnitSystem;
  readonly step: number;
}

/** Pixels between the finest lines at least, and for a millimetre at least: enlarged on most screens. */
const FINEST = 7;
const ENLARGED = 4.5;

/** Where the ruler's edge lies below the top, and how deep it is, px. */
const EDGE = 20;
const HEIGHT = 66;

/** How long the lines of each rank are, px. */
const LENGTHS = [24, 18, 14, 11, 9, 7];

/** A stretch of the maker's ruler about one of a leaf's marks (mm from the head), `width` px wide: which of its lines it lies at. The others are pale. */
export function rulerStrip({ units, step }: Ruler, marks: readonly number[], now: number, width: number): string {
  const scale = Math.max(ENLARGED, FINEST / step);
  const at = marks[now]!;
  const from = Math.max(-12 / scale, at - width / 2 / scale);
  const x = (mm: number): number => (mm - from) * scale;
  const lines = graduations(units, step, from, from + width / scale);
  const body = { class: "ruler-body", x: Math.max(-4, x(0)), y: EDGE, width: width + 8, height: HEIGHT - EDGE - 1 };
  const parts = [
    tag("rect", body),
    ...lines.map((line) => lineOf(line, x)),
    ...lines.filter((line) => line.rank === 0 && hasRoom(line.at, x, width)).map((line) => figureOf(line.at, units, x)),
    ...marks.map((mark, i) => (i === now ? "" : pointer("ruler-other", x(mark), 5))),
    tag("line", { class: "ruler-now", x1: x(at), y1: EDGE, x2: x(at), y2: EDGE + LENGTHS[0]! + 6 }),
    pointer("ruler-pointer", x(at), 9),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" class="ruler-drawing" width="${num(width)}" height="${HEIGHT}" viewBox="0 0 ${num(width)} ${HEIGHT}" aria-hidden="true" focusable="false">${parts.join("")}</svg>`;
}

/** Room that half a figure takes at either end of what is shown. */
const FIGURE = 13;

/** The ruler's beginning has its figure beside it. */
function hasRoom(at: number, x: (mm: number) => number, width: number): boolean {
  return x(at) <= width - FIGURE && (at === 0 || x(at) >= FIGURE);
}

function lineOf({ at, rank }: Graduation, x: (mm: number) => number): string {
  return tag("line", { class: "ruler-line", x1: x(at), y1: EDGE, x2: x(at), y2: EDGE + LENGTHS[rank]! });
}

function figureOf(at: number, units: UnitSystem, x: (mm: number) => number): string {
  const words = formatNumber(at, { units, step: rulerStep(units, "plain") });
  // The ruler's beginning has no room on both sides.
  const [left, anchor] = at === 0 ? [x(at) + 3, "start"] : [x(at), "middle"];
  return text(left, HEIGHT - 6, words, { class: "ruler-figure", "text-anchor": anchor, "font-size": 15 });
}

/** An arrow down to the ruler's edge. */
function pointer(name: string, x: number, half: number): string {
  const d = ringPath([
    [x - half, EDGE - 2 * half + 1],
    [x + half, EDGE - 2 * half + 1],
    [x, EDGE - 1],
  ]);
  return tag("path", { class: name, d });
}
