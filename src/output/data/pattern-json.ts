import type { Point } from "../../core/geometry/point.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { Supply } from "../../core/supplies/supplies.ts";
import { tidy } from "../../core/units/length.ts";
import type { Insert } from "../../core/window/insert.ts";
import { sizeOfPart } from "../../core/window/part.ts";

/**
 * The published pattern (`leaflight/pattern/1`): mm and radians; marks exact to 1e-5 mm, derived lengths to 0.001 mm,
 * angles to 1e-6. A line a leaf, so that a diff reads.
 */
export function patternJson(kit: Kit, pattern: Pattern, supplies: readonly Supply[], effort: Effort): string {
  const { book, fit } = pattern;
  const document = {
    schema: "leaflight/pattern/1",
    kit: kit.slug,
    title: kit.title,
    ...(kit.versions[0] ? { version: kit.versions[0].version } : {}),
    unit: "mm",
    book: { ...book },
    levels: pattern.levels.map(({ name, depth, line, background }) => ({
      name,
      depth: tidy(depth),
      ...(line ? { line } : {}),
      ...(background ? { background } : {}),
    })),
    fit: {
      firstLeaf: fit.firstLeaf,
      lastLeaf: fit.lastLeaf,
      opening: tidy(fit.opening, 6),
      spine: fit.spine,
      view: fit.view,
      head: tidy(fit.head),
      height: tidy(fit.height, 3),
      width: tidy(fit.width, 3),
      stretch: tidy(fit.stretch, 6),
      holdWidth: tidy(fit.holdWidth, 3),
      edgeWidth: tidy(fit.edgeWidth, 3),
      boardWidth: tidy(fit.boardWidth, 3),
      restingOpening: tidy(fit.restingOpening, 6),
      foldStyle: fit.foldStyle,
      markStep: tidy(fit.markStep),
      leastTab: tidy(fit.leastTab),
    },
    leaves: pattern.leaves.map((leaf) => ({
      leaf: leaf.leaf,
      patternPage: leaf.patternPage,
      bookPage: leaf.bookPage,
      ...(leaf.name.kind === "numbered" ? {} : { unnumbered: leaf.name }),
      x: leaf.x.map((x) => tidy(x, 3)),
      spans: leaf.spans.map((span) => ({ from: tidy(span.from), to: tidy(span.to), level: span.level })),
      cuts: leaf.cuts.map((cut) => ({ at: tidy(cut.at), depth: tidy(cut.depth) })),
      tacks: leaf.tacks.map((tack) => ({ from: tidy(tack.from), to: tidy(tack.to) })),
    })),
    absorbed: pattern.absorbed,
    ...(pattern.pocket ? { light: lightJson(pattern.pocket) } : {}),
    ...(pattern.insert ? { insert: insertJson(pattern.insert) } : {}),
    lostLeaves: pattern.lostLeaves,
    supplies: supplies.map(({ kind, item, quantity, unit, note, price }) => ({
      kind,
      item,
      quantity,
      unit,
      note,
      ...(price === undefined ? {} : { price }),
    })),
    time: {
      minutes: Math.round(effort.minutes),
      byStage: Object.fromEntries(Object.entries(effort.byStage).map(([stage, minutes]) => [stage, tidy(minutes, 1)])),
    },
    warnings: pattern.warnings,
  };
  return writeDocument(document);
}

function lightJson(pocket: Pocket): Record<string, unknown> {
  const { light, centre } = pocket;
  return {
    in: light.level,
    diameter: tidy(light.diameter),
    height: tidy(light.height),
    clearance: tidy(light.clearance),
    setback: tidy(light.setback),
    floor: tidy(pocket.floor),
    centre: { x: tidy(centre.x, 3), z: tidy(centre.z, 3) },
    largest: pocket.largest,
    notches: pocket.notches,
  };
}

function insertJson(insert: Insert): Record<string, unknown> {
  const points = (line: readonly Point[]): number[][] => line.map(([x, y]) => [tidy(x, 3), tidy(y, 3)]);
  return {
    lip: tidy(insert.wish.lip),
    hinge: insert.wish.hinge,
    panel: insert.wish.panel,
    stringLength: tidy(insert.stringLength, 1),
    frameLength: tidy(insert.frameLength, 2),
    parts: insert.parts.map((part) => {
      const size = sizeOfPart(part);
      return {
        name: part.name,
        material: part.material,
        count: part.count,
        frame: part.frame,
        outlines: part.outlines.map(points),
        scores: part.scores.map(points),
        marks: part.marks.map((mark) => ({ line: points(mark.line), label: mark.label })),
        width: tidy(size.width, 3),
        height: tidy(size.height, 3),
        area: tidy(size.area, 2),
        perimeter: tidy(size.perimeter, 2),
      };
    }),
  };
}

function writeDocument(document: Record<string, unknown>): string {
  const fields = Object.entries(document).map(([key, value]) => `  ${JSON.stringify(key)}: ${writeValue(value)}`);
  return `{\n${fields.join(",\n")}\n}\n`;
}

function writeValue(value: unknown): string {
  if (isInsert(value)) {
    const { parts, ...rest } = value;
    return `${JSON.stringify(rest).slice(0, -1)}, "parts": [\n${parts.map((part) => `    ${JSON.stringify(part)}`).join(",\n")}\n  ]}`;
  }
  if (!Array.isArray(value) || value.length === 0) return JSON.stringify(value);
  return `[\n${value.map((item) => `    ${JSON.stringify(item)}`).join(",\n")}\n  ]`;
}

/** The window's parts are long: a line each. */
function isInsert(value: unknown): value is { readonly parts: readonly unknown[] } {
  return typeof value === "object" && value !== null && "parts" in value && Array.isArray(value.parts);
}
