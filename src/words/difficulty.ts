import type { Difficulty } from "../core/plan/effort.ts";
import * as say from "./messages.ts";

/** A word for how much work a kit is. */
export function difficultyWord(difficulty: Difficulty): string {
  switch (difficulty) {
    case "easy":
      return say.difficultyEasy();
    case "medium":
      return say.difficultyModerate();
    case "long":
      return say.difficultyDemanding();
  }
}
