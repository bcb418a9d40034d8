import { depthsOf, type Pattern } from "../../../core/pattern/pattern.ts";
import { paperTone } from "../front/tone.ts";

/** The tint of a level: light where the picture is proud, dark where it is deep. */
export function levelTone(pattern: Pattern, level: number): string {
  const depths = depthsOf(pattern.levels);
  const [front, deepest] = [depths[0]!, Math.max(...depths)];
  return paperTone((depths[level - 1]! - front) / Math.max(1, deepest - front), 0.99);
}
