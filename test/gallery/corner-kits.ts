import { computeCorner } from "../../src/core/pattern/compute-corner.ts";
import type { CornerPattern } from "../../src/core/pattern/corner-pattern.ts";
import type { PatternedKit } from "../../src/core/pattern/patterned-kit.ts";
import { type Refit, refitKit } from "../../src/core/refit/refit.ts";
import { galleryKit, type KitName } from "./kits.ts";

/** Kits of the gallery folded by corners: leaves that take turns, a light and a window left out, creases near the gutter, a book that is read from right to left. */
const FOLDED = {
  gull: ["gull", {}],
  moon: ["moon", {}],
  narrow: ["gull", { leafWidth: 64 }],
  rtl: ["small", { direction: "rtl" }],
} as const satisfies Readonly<Record<string, readonly [KitName, Refit]>>;

/** A kit of the gallery as a reader folds it by corners. */
export function cornerKit(name: keyof typeof FOLDED): PatternedKit<CornerPattern> {
  const [of, refit] = FOLDED[name];
  const kit = refitKit(galleryKit(of).kit, { ...refit, foldStyle: "corner" });
  const result = computeCorner(kit);
  if (!result.fits) throw new Error(`${name} is not folded by corners: ${result.finding.kind}`);
  const { pattern, findings } = result;
  return { kit, pattern, findings, pictureNotes: [] };
}
