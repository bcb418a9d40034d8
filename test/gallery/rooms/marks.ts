import { brandMark } from "../../../src/output/drawing/brand-mark.ts";
import type { Scene } from "../scene.ts";

export const marks: readonly Scene[] = (["round", "full"] as const).map((shape) => ({
  room: "marks",
  name: `brand-mark-${shape}`,
  of: brandMark,
  draw: () => brandMark(shape),
}));
