import type { CornerWish } from "../../core/kit/corner-wish.ts";
import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { levelNumber } from "../picture/level-number.ts";
import type { FrontMatter } from "./schema.ts";

/** The levels that folded corners show by number, the front one among them. @throws ProblemError at a name that is no level, or the background's */
export function resolveCorner(
  { corner: { levels: names, empty } }: FrontMatter["fit"],
  levels: readonly Level[],
): CornerWish {
  const joined = names.map((name, i) => {
    const at = ["fit", "corner", "levels", i];
    const level = levelNumber(name, levels, at);
    if (!levels[level - 1]!.background) return level;
    const others = levels.filter(({ background }) => !background).map((one) => one.name);
    throw problem(at, {
      given: say.frontBackgroundJoined({ level: name }),
      allowed: say.frontALevel({ levels: others.join(", ") }),
      remedy: say.frontTakeLevelOff(),
    });
  });
  return { levels: [...new Set([1, ...joined])].sort((a, b) => a - b), empty, dropped: [] };
}
