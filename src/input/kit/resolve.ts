import type { Kit, Level, SheetSize } from "../../core/kit/kit.ts";
import { Problem } from "../../core/problem.ts";
import { MM_PER_INCH, tidy, type UnitSystem } from "../../core/units/length.ts";
import type { FrontMatter } from "./schema.ts";

/** One of picture leaves, height and opening follows from the others; an opening beyond flat needs a piece to walk round. @throws Problem */
export function checkWishes(data: FrontMatter): void {
  const { fit, book } = data;
  const solved = (["pictureLeaves", "height", "opening"] as const).filter((key) => fit[key] === "solve");
  if (solved.length > 1) {
    throw new Problem(`fit.${solved[1]}`, {
      given: `${solved.join(" and ")} are both "solve"`,
      allowed: "one of pictureLeaves, height and opening can be solved, from the other two",
      remedy: `state ${solved.slice(1).join(" and ")}`,
    });
  }
  if (fit.opening === undefined && solved.length > 0) {
    throw new Problem("fit.opening", {
      given: `not given, while ${solved[0]} is "solve"`,
      allowed: "degrees, 5 to 180",
      remedy: "state the opening, or let opening be the one that is solved",
    });
  }
  if (typeof fit.opening === "number" && fit.opening > 180 && fit.view === "front") {
    throw new Problem("fit.opening", {
      given: `given ${fit.opening}`,
      allowed: "5 to 180 degrees with view: front",
      remedy: "lower it, or use view: along for a piece read while walking round",
    });
  }
  if (book.lastPage === undefined && book.leaves < book.pageOneLeaf) {
    throw new Problem("book.pageOneLeaf", {
      given: `given ${book.pageOneLeaf}`,
      allowed: `a leaf of the book, 1 to ${book.leaves}`,
      remedy: "count again from the first leaf",
    });
  }
  const lastPage = lastPageOf(book);
  if (lastPage < 1) {
    throw new Problem("book.plates", {
      given: `${plateLeavesOf(book)} unnumbered leaves between the pages`,
      allowed: `fewer than the ${book.leaves - book.pageOneLeaf + 1} leaves from page 1 on`,
      remedy: "count the plates again (leaves, not pages)",
    });
  }
  for (const [i, plate] of book.plates.entries()) {
    if (plate.afterPage <= lastPage) continue;
    throw new Problem(`book.plates.${i}.afterPage`, {
      given: `given ${plate.afterPage}`,
      allowed: `a printed page, 1 to ${lastPage}`,
      remedy: "leaves after the last page need no entry: they are unnumbered end leaves",
    });
  }
}

/** The last printed page: as stated, or else every leaf from page 1 on is numbered but for the plates. */
export function lastPageOf(book: FrontMatter["book"]): number {
  return book.lastPage ?? 2 * (book.leaves - book.pageOneLeaf + 1 - plateLeavesOf(book));
}

function plateLeavesOf(book: FrontMatter["book"]): number {
  return book.plates.reduce((sum, plate) => sum + plate.leaves, 0);
}

/** The levels with their depths, checked. @throws Problem */
export function resolveLevels(data: FrontMatter): Level[] {
  const lines = data.gauge?.lines ?? [];
  lines.forEach((line, i) => {
    if (i > 0 && line <= lines[i - 1]!) {
      throw new Problem(`gauge.lines.${i}`, {
        given: `${tidy(line, 2)} mm after ${tidy(lines[i - 1]!, 2)} mm`,
        allowed: "lines further and further from the fore-edge",
        remedy: "put the lines in order",
      });
    }
  });
  const levels = data.levels.map((level, i): Level => {
    const depth = depthOf(level, i, lines);
    const line = level.line ?? numberOfLine(lines.length > 0 ? lines : undefined, depth, i);
    return { name: level.name, depth, line, background: level.background ?? false };
  });
  levels.forEach((level, i) => {
    const before = levels[i - 1];
    if (before && level.depth <= before.depth) {
      throw new Problem(`levels.${i}`, {
        given: `"${level.name}" at ${tidy(level.depth, 2)} mm after "${before.name}" at ${tidy(before.depth, 2)} mm`,
        allowed: "depths that increase from the first level (front) to the last (back)",
        remedy: "put the levels in order or deepen this one",
      });
    }
    if (levels.findIndex((other) => other.name === level.name) !== i) {
      throw new Problem(`levels.${i}.name`, {
        given: `a second level "${level.name}"`,
        allowed: "a name of its own for each level",
        remedy: "rename one of them",
      });
    }
  });
  const backgrounds = levels.filter((level) => level.background);
  if (backgrounds.length !== 1) {
    throw new Problem("levels", {
      given: `${backgrounds.length} levels with background: true`,
      allowed: "exactly one, the level that stands where no shape is",
      remedy: backgrounds.length === 0 ? "add background: true to one level" : "leave it on one level only",
    });
  }
  return levels;
}

/** Sheets by name: A4 (ISO 216), US Letter, and the 12 × 12 in of craft shops; mm. */
const SHEETS = {
  a4: { name: "A4", width: 210, height: 297 },
  letter: { name: "Letter", width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
  "12x12": { name: "12 × 12 in", width: 12 * MM_PER_INCH, height: 12 * MM_PER_INCH },
} as const;

/** Sheets as they are named or measured; without any, the usual ones, first the one of the units' own lands. */
export function sheetsOf(
  sheets: readonly (keyof typeof SHEETS | SheetSize)[] | undefined,
  units: UnitSystem,
): SheetSize[] {
  const usual = units === "mm" ? (["a4", "letter", "12x12"] as const) : (["letter", "a4", "12x12"] as const);
  return (sheets ?? usual).map((sheet) => (typeof sheet === "string" ? SHEETS[sheet] : sheet));
}

/** The light and the window with their levels by number, and the sheets for the parts. @throws Problem */
export function windowOf(
  data: FrontMatter,
  levels: readonly Level[],
): Pick<Kit, "light" | "cells" | "insert" | "sheets"> {
  const numberOf = (name: string, field: string): number => {
    const level = levels.findIndex((one) => one.name === name) + 1;
    if (level > 0) return level;
    throw new Problem(field, {
      given: `given "${name}"`,
      allowed: `a level: ${levels.map((one) => one.name).join(", ")}`,
      remedy: "correct the name",
    });
  };
  const { light, insert } = data;
  return {
    light: light && {
      level: light.in === undefined ? levels.length : numberOf(light.in, "light.in"),
      diameter: light.diameter,
      height: light.height,
      clearance: light.clearance,
      setback: light.setback,
      floor: light.floor,
    },
    cells: light?.cells,
    insert: insert && {
      outline: numberOf(insert.outline, "insert.outline"),
      lip: insert.lip,
      hinge: insert.hinge,
      panel: insert.panel,
    },
    sheets: sheetsOf(data.sheets, data.units),
  };
}

function depthOf(level: FrontMatter["levels"][number], i: number, lines: readonly number[]): number {
  if ((level.depth === undefined) === (level.line === undefined)) {
    throw new Problem(`levels.${i}`, {
      given: level.depth === undefined ? "neither depth nor line" : "both depth and line",
      allowed: "one of them: depth (a length) or line (a number of gauge.lines)",
      remedy: level.depth === undefined ? "add depth or line" : "remove one",
    });
  }
  if (level.depth !== undefined) return level.depth;
  const depth = lines[level.line! - 1];
  if (depth === undefined) {
    throw new Problem(`levels.${i}.line`, {
      given: `given ${level.line}`,
      allowed:
        lines.length > 0
          ? `1 to ${lines.length}, the lines of gauge.lines`
          : "a line of gauge.lines, and there are none",
      remedy: "correct the number or add the line to gauge.lines",
    });
  }
  return depth;
}

/** Without a gauge of its own, a kit's levels are its gauge. */
function numberOfLine(lines: readonly number[] | undefined, depth: number, i: number): number | undefined {
  if (!lines) return i + 1;
  const index = lines.findIndex((line) => Math.abs(line - depth) < 1e-6);
  return index < 0 ? undefined : index + 1;
}
