import type { Difficulty } from "../core/plan/effort.ts";
import * as say from "./messages.ts";

/** A word for how much work a kit is. */
export function difficultyWord(difficulty: Difficulty): string {
  switch (difficulty) {
    case "easy":
      return say.difficultyEasy();
    case "moderate":
      return say.difficultyModerate();
    case "demanding":
      return say.difficultyDemanding();
  }
}
