import { BOUNDS } from "../../../core/kit/bounds.ts";
import { roundTo } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import { lengthAt } from "./length-at.ts";
import type { Shown } from "./shown.ts";

/** Where the light stands and how large it is; none of a kit without one. */
export function lampFields({ kit, pattern, stated }: Shown): FigureField[] {
  const { light, levels } = kit;
  if (!light || !stated.light) return [];
  const length = (
    key: "diameter" | "height" | "setback" | "clearance",
    label: string,
    bounds: Extract<FigureField, { readonly bounds: unknown }>["bounds"],
  ): FigureField => ({
    name: `light-${key}`,
    label,
    bounds,
    figure: light[key],
    edits: (mm) => [lengthAt(["light", key], mm)],
  });
  return [
    {
      name: "light-in",
      label: say.deskKitLampIn(),
      options: levels.map(({ name }) => ({ value: name, label: name })),
      chosen: levels[light.level - 1]!.name,
      edits: (value) => [{ at: ["light", "in"], value }],
    },
    length("diameter", say.deskKitLampDiameter(), BOUNDS.lightDiameter),
    length("height", say.deskKitLampHeight(), BOUNDS.lightHeight),
    length("setback", say.deskKitLampSetback(), BOUNDS.lightSetback),
    length("clearance", say.deskKitLampClearance(), BOUNDS.lightClearance),
    {
      name: "light-floor",
      label: say.deskKitLampFloor(),
      bounds: BOUNDS.lightFloor,
      figure: pattern.pocket?.floor ?? (light.floor === "auto" ? 0 : light.floor),
      edits: (mm) => [floorEdit(mm)],
    },
  ];
}

/** The floor at a height, from the head. */
export function floorEdit(mm: number): Edit {
  return lengthAt(["light", "floor"], mm);
}

/** A usual battery tea light, as the guide describes it: 38 mm wide, 45 mm tall with its tip (common practice, no source); in inches, the nearest sixteenth. */
const USUAL = { diameter: 38, height: 45 } as const;

/** Puts a usual light in: it stands in the deepest level unless that is told otherwise. */
export function lampEdits({ kit }: Pick<Shown, "kit">): Edit[] {
  const step = rulerStep(kit.units, "plain");
  const onRuler = (mm: number): number => roundTo(mm, step);
  return [
    lengthAt(["light", "diameter"], onRuler(USUAL.diameter)),
    lengthAt(["light", "height"], onRuler(USUAL.height)),
  ];
}
