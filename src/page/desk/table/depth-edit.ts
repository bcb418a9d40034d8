import { BOUNDS } from "../../../core/kit/bounds.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import { lengthAt } from "./length-at.ts";
import type { Shown } from "./shown.ts";

/** What gives a level (from 0) another depth: its own key, or the line of the gauge that it names. */
export function depthEdit({ stated }: Pick<Shown, "stated">, level: number, mm: number): Edit {
  const line = stated.levels[level]!.line;
  return line === undefined ? lengthAt(["levels", level, "depth"], mm) : lengthAt(["gauge", "lines", line - 1], mm);
}

/**
 * Gives a level (from 0) another depth without moving the gauge's lines: it names the line that stands there, or states its own
 * depth where none does.
 */
export function restatedDepth({ stated }: Pick<Shown, "stated">, level: number, mm: number): Edit[] {
  const at = ["levels", level] as const;
  const line = (stated.gauge?.lines ?? []).findIndex((one) => Math.abs(one - mm) < 1e-6) + 1;
  if (stated.levels[level]!.line === undefined) return [lengthAt([...at, "depth"], mm)];
  if (line > 0) return [{ at: [...at, "line"], value: line }];
  return [lengthAt([...at, "depth"], mm), { at: [...at, "line"], value: undefined }];
}

/** Between what a level's depth may be moved, mm: its neighbours, or the gauge's neighbouring lines, stay a step away. */
export function depthBounds(
  { kit, stated }: Pick<Shown, "kit" | "stated">,
  level: number,
  step: number,
): { readonly least: number; readonly most: number } {
  const { levels, book } = kit;
  const line = stated.levels[level]!.line;
  const lines = stated.gauge?.lines ?? [];
  const before = Math.max(levels[level - 1]?.depth ?? 0, (line === undefined ? undefined : lines[line - 2]) ?? 0);
  const after = Math.min(
    levels[level + 1]?.depth ?? Number.POSITIVE_INFINITY,
    (line === undefined ? undefined : lines[line]) ?? Number.POSITIVE_INFINITY,
  );
  const least = Math.max(BOUNDS.depth.least, before + step);
  return { least, most: Math.max(least, Math.min(BOUNDS.depth.most, book.leafWidth, after - step)) };
}

/** A field for the depth of each level. */
export function depthFields(shown: Shown): FigureField[] {
  const step = rulerStep(shown.kit.units, "fine");
  return shown.kit.levels.map(({ name, depth }, i) => ({
    name: `depth-${i}`,
    label: say.deskKitDepth({ level: name }),
    bounds: { kind: "length", ...depthBounds(shown, i, step) },
    figure: depth,
    edits: (mm) => [depthEdit(shown, i, mm)],
  }));
}
