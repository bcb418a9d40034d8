import { formatLength, formatSize } from "../../words/lengths.ts";
import { caliperDoubt } from "../book/book.ts";
import { numberLeaves } from "../book/numbering.ts";
import { stationAt } from "../fan/front.ts";
import { boxOf } from "../geometry/area.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { levelExtents } from "../picture/level-extents.ts";
import { toDegrees } from "../units/angle.ts";
import { type LengthStyle, tidy } from "../units/length.ts";
import type { Face } from "./compute.ts";
import { type Pattern, pictureLeaves } from "./pattern.ts";

/** What can be made but may disappoint, in sentences with figures. */
export function warningsOf(kit: Kit, pattern: Omit<Pattern, "warnings">, face: Face): string[] {
  return [
    ...graveWarnings(kit, pattern),
    ...reachWarnings(kit, face),
    ...absorbedWarning(kit, pattern),
    ...leftOverWarning(kit, pattern),
  ];
}

/** Those that say that a book was measured wrong or will not carry the piece well: a maker should read them before she begins. */
export function graveWarnings(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  return [
    ...caliperWarning(kit),
    ...unnumberedWarning(kit),
    ...restingWarning(pattern),
    ...coarseWarning(kit, pattern),
    ...stretchWarning(pattern),
    ...narrowWarning(kit, pattern),
    ...passWarning(kit, pattern),
  ];
}

/** Front tips farther apart than this show a picture in steps, mm (common practice, no source). */
const COARSE = 3;

/** A leaf is one column of the picture. */
function coarseWarning(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  const leaves = pictureLeaves(pattern).length;
  const column = pattern.fit.width / Math.max(1, leaves - 1);
  if (column <= COARSE) return [];
  return [
    `Only ${leaves} leaves carry the picture, each a column ${formatSize(column, kit.units)} wide: it comes out in steps, and what is narrower than a column is lost. Choose a book with more leaves, or a lower picture.`,
  ];
}

function caliperWarning(kit: Kit): string[] {
  const doubt = caliperDoubt(kit.book);
  return doubt === undefined ? [] : [`Check the book: ${doubt}.`];
}

function restingWarning(pattern: Omit<Pattern, "warnings">): string[] {
  const { opening, restingOpening } = pattern.fit;
  if (opening >= restingOpening) return [];
  return [
    `The folded flaps will push the book open ${restingOpening > 2 * Math.PI ? "all the way round" : `to about ${degrees(restingOpening)}`}, wider than the ${degrees(opening)} at which the picture has its true shape: press the folds well, and tie the book while it settles. Shallower levels, fewer folded leaves or a greater height bring the two together.`,
  ];
}

function stretchWarning(pattern: Omit<Pattern, "warnings">): string[] {
  const { stretch } = pattern.fit;
  const percent = (stretch - 1) * 100;
  if (Math.abs(percent) < 1) return [];
  return [
    `The picture comes out ${Math.abs(percent).toFixed(1)} % ${percent > 0 ? "wider" : "narrower"} than drawn: let one of height, opening and pictureLeaves be "solve" to keep its shape.`,
  ];
}

/** Deeper tips stand nearer the middle, so the outermost leaves cannot show a deep level that reaches the picture's edge. */
function reachWarnings(kit: Kit, face: Face): string[] {
  if (kit.fit.view === "along") return [];
  const style: LengthStyle = { units: kit.units, step: kit.fit.markStep };
  const frontDepth = kit.levels[0]!.depth;
  const background = backgroundLevel(kit.levels);
  const last = face.range.first + face.range.count - 1;
  return kit.levels.flatMap((level, k) => {
    if (k + 1 === background || k === 0) return [];
    const extent = extentOf(kit, face, k + 1);
    if (!extent) return [];
    const start = stationAt(face.fan, face.range, face.front, frontDepth, face.range.first, level.depth);
    const end = stationAt(face.fan, face.range, face.front, frontDepth, last, level.depth);
    const missing = Math.max(start - extent[0], extent[1] - end, 0);
    if (missing <= kit.fit.markStep) return [];
    return [
      `Level "${level.name}" reaches to the picture's side, where its tips cannot stand: up to ${formatLength(missing, style)} of it at the edge is shown by other leaves, deeper or not at all.`,
    ];
  });
}

/** From where to where (mm, in book order) the picture has a level. */
function extentOf(kit: Kit, face: Face, level: number): [number, number] | undefined {
  const extent = levelExtents(kit.picture)[level - 1];
  if (!extent) return undefined;
  const [least, most] = kit.book.direction === "ltr" ? extent : [1 - extent[1], 1 - extent[0]];
  return [least * face.front.width, most * face.front.width];
}

function absorbedWarning(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  const count = pattern.absorbed.length;
  if (count === 0) return [];
  const leaves = new Set(pattern.absorbed.map((span) => span.leaf)).size;
  const style: LengthStyle = { units: kit.units, step: kit.fit.markStep };
  return [
    `${count} ${count === 1 ? "span" : "spans"} on ${leaves} ${leaves === 1 ? "leaf" : "leaves"} would be shorter than ${formatLength(kit.fit.leastTab, style)} and ${count === 1 ? "was" : "were"} given to a neighbour; each is listed below the table.`,
  ];
}

function leftOverWarning(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  const left = kit.book.leaves - (pattern.fit.lastLeaf + kit.fit.borderLeaves[1]);
  if (left === 0) return [];
  const [before, after] = kit.fit.borderLeaves;
  const share = Math.floor(left / 2);
  return [
    `${left} ${left === 1 ? "leaf stays" : "leaves stay"} unfolded after the last border leaf, so the picture stands off the middle: borderLeaves [${before + share}, ${after + left - share}] would fold them and centre it.`,
  ];
}

/** The light goes in and out through the window. */
function passWarning(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  const opening = pattern.insert?.parts.find((part) => part.name === "decoration guide");
  if (!pattern.pocket || !opening) return [];
  const box = boxOf(opening.outlines);
  const { diameter } = pattern.pocket.light;
  if (Math.min(box.right - box.left, box.bottom - box.top) >= diameter + 1) return [];
  return [
    `The light, ${formatSize(diameter, kit.units)} wide, does not pass through the window's opening (${formatSize(box.right - box.left, kit.units)} × ${formatSize(box.bottom - box.top, kit.units)}): it could not be put in or taken out. Use a narrower light, a smaller lip or a larger opening.`,
  ];
}

/** Share of the leaves that may stay unnumbered after the last page before it looks like a miscount. */
const UNNUMBERED = 0.1;

/** Many leaves after the last page: pages may have been counted as leaves. */
function unnumberedWarning(kit: Kit): string[] {
  const left = kit.book.leaves - numberLeaves(kit.book).leavesNeeded;
  if (left <= UNNUMBERED * kit.book.leaves) return [];
  return [
    `Check the book: after page ${kit.book.lastPage} there would be ${left} unnumbered leaves. If ${kit.book.leaves} is the number of pages, write ${Math.ceil(kit.book.leaves / 2)} leaves.`,
  ];
}

/** A floor that the kit gives may stand where the region is narrower than the light. */
function narrowWarning(kit: Kit, pattern: Omit<Pattern, "warnings">): string[] {
  const { pocket } = pattern;
  const need = pocket && pocket.light.diameter + 2 * pocket.light.clearance;
  if (!pocket || need === undefined || pocket.leastWidth >= need - 0.25) return [];
  const name = kit.levels[pocket.light.level - 1]!.name;
  return [
    `At the floor that the kit gives, level "${name}" is ${formatSize(pocket.leastWidth, kit.units)} wide at its narrowest, and the light with its clearance is ${formatSize(need, kit.units)}: paper beside the level is notched away too. floor: auto looks for a wide enough place.`,
  ];
}

function degrees(angle: number): string {
  return `${tidy(toDegrees(angle), 1)}°`;
}
