import type { Size } from "../../core/geometry/box.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import type { FieldPath } from "../files/problem.ts";
import { mmOf } from "../files/span.ts";
import { toleranceOf } from "./bow.ts";
import { room } from "./room.ts";
import type { FieldsOf } from "./schema.ts";

/** The foot of a canvas up to a straight or a wavy edge, which begins at the left by rising. @throws ProblemError where its waves have no room */
export function ground({ height, wave, waves }: FieldsOf<"ground">, size: Size, at: FieldPath): Ring[] {
  const level = room(mmOf(height, size.height), size.height, { at: [...at, "height"], size });
  const most = Math.min(level, size.height - level);
  const swing = wave ? room(mmOf(wave, size.height), most, { at: [...at, "wave"], size }) : 0;
  const turn = 2 * Math.PI * waves;
  const steps = chordsOf(swing, turn, toleranceOf(size));
  const edge = Array.from({ length: steps + 1 }, (_, i): Point => {
    const share = i / steps;
    return [share * size.width, size.height - level - swing * Math.sin(turn * share)];
  });
  return level > 0 ? [[...edge, [size.width, size.height], [0, size.height]]] : [];
}

/** How many equal steps keep chords of swing · sin(turn · t) within a tolerance: they stray by at most h²/8 of its greatest bend. */
function chordsOf(swing: number, turn: number, tolerance: number): number {
  return Math.max(1, Math.ceil(turn * Math.sqrt(swing / (8 * tolerance))));
}
