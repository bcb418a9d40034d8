import type { Kit, Level } from "../../core/kit/kit.ts";
import { gaugeSize } from "../../core/plan/gauge-size.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import { num, tag, text } from "./svg-text.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

const TOP = 18;

/**
 * A scoring gauge to cut out at true scale: its left edge goes flush with the fore-edge, each numbered line stands at its
 * distance from it. Lines of the kit's levels are drawn full and carry the level's name; the gauge's other lines are thin.
 */
export function gaugeSheet(kit: Kit): string {
  const lines = gaugeLines(kit);
  const left = BAR_ROOM.left + 14;
  const { width, height } = gaugeSize(kit);
  const outline = `M${num(left, 3)} ${TOP}h${num(width, 3)}v${num(height, 3)}h${num(-width, 3)}z`;
  return [
    tag("path", { d: outline, fill: "none", stroke: "#000", "stroke-width": 0.35 }),
    text(0, 0, "this edge flush with the fore-edge", {
      "font-size": 3.2,
      transform: `translate(${num(left - 2)} ${num(TOP + height / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
    ...lines.map((line, i) => gaugeLine(line, i, left, height, kit.units)),
    lineList(lines, left + width + 10, kit.units),
    text(
      left,
      TOP - 6,
      "Glue to card, cut along the full outline, prick the holes along each line and score through them.",
      { "font-size": 3 },
    ),
    text(left, TOP - 2, "Dashed: score lines, each at its distance from the fore-edge.", { "font-size": 3 }),
    calibration(kit.units),
  ].join("");
}

interface GaugeLine {
  readonly number: number | undefined;
  readonly depth: number;
  /** Levels that are folded at it, by their numbers in the pattern table. */
  readonly levels: readonly { readonly number: number; readonly name: string }[];
}

function gaugeLines(kit: Kit): GaugeLine[] {
  const own = kit.gaugeLines.map((depth, i) => ({
    number: i + 1,
    depth,
    levels: levelsWhere(kit, (level) => level.line === i + 1),
  }));
  const free = kit.levels
    .filter((level) => level.line === undefined)
    .map((level) => ({
      number: undefined,
      depth: level.depth,
      levels: levelsWhere(kit, (one) => one === level),
    }));
  return [...own, ...free].sort((a, b) => a.depth - b.depth);
}

function gaugeLine(line: GaugeLine, index: number, left: number, height: number, units: UnitSystem): string {
  const x = left + line.depth;
  const used = line.levels.length > 0;
  const holes = Array.from({ length: Math.floor(height / 20) }, (_, i) =>
    tag("circle", {
      cx: x,
      cy: TOP + 10 + i * 20,
      r: 0.5,
      fill: used ? "#000" : "none",
      stroke: "#000",
      "stroke-width": 0.15,
    }),
  );
  const place = `${line.number === undefined ? "" : `line ${line.number} · `}${formatSize(line.depth, units)}`;
  const label = used ? `${line.levels.map(({ number, name }) => `${number} ${name}`).join(", ")} · ${place}` : place;
  return [
    tag("path", {
      d: `M${num(x, 3)} ${TOP}v${num(height, 3)}`,
      fill: "none",
      stroke: "#000",
      "stroke-width": used ? 0.3 : 0.15,
      "stroke-dasharray": used ? "3.6 0.9" : "1.8 0.9",
    }),
    ...holes,
    text(0, 0, label, {
      "font-size": used ? 3.4 : 2.8,
      "font-weight": used ? 600 : 400,
      transform: `translate(${num(x + (used ? 3.6 : 3.1))} ${num(TOP + 65 + (index % 2) * 60)}) rotate(-90)`,
    }),
    ...(used
      ? [
          text(x, TOP + height + 4.4, line.levels.map(({ number }) => number).join(", "), {
            "font-size": 4.4,
            "font-weight": 700,
            "text-anchor": "middle",
          }),
        ]
      : []),
  ].join("");
}

function levelsWhere(kit: Kit, wanted: (level: Level) => boolean): GaugeLine["levels"] {
  return kit.levels
    .map((level, i) => ({ level, number: i + 1, name: level.name }))
    .filter(({ level }) => wanted(level));
}

/** The gauge's lines as a list beside it, where the sheet has room. */
function lineList(lines: readonly GaugeLine[], left: number, units: UnitSystem): string {
  if (left > SHEET.width - 50) return "";
  const rows = lines.map((line, i) => {
    const name = line.number === undefined ? "a line of its own" : `line ${line.number}`;
    const used = line.levels.map((level) => `${level.number} ${level.name}`).join(", ");
    const words =
      used === ""
        ? `${name}, ${formatSize(line.depth, units)}: not used in this kit`
        : `${used}: ${name}, ${formatSize(line.depth, units)}`;
    return text(left, TOP + 16 + i * 7, words, {
      "font-size": 3.8,
      "font-weight": line.levels.length > 0 ? 600 : 400,
    });
  });
  return [
    text(left, TOP + 6, "Levels on your gauge, from the fore-edge", { "font-size": 4.4, "font-weight": 600 }),
    text(left, TOP + 10.5, "Bold numbers are the levels of the pattern table.", { "font-size": 3 }),
    ...rows,
  ].join("");
}
