import type { Remedy } from "../core/class/remedies.ts";
import type { Target } from "../core/class/schedule.ts";
import { minutesText } from "./clock.ts";
import { hoursText } from "./hours.ts";
import { leafAndPage } from "./leaves.ts";
import * as say from "./messages.ts";

/** Where a seat should be when a session ends; `all` is how many leaves it folds. */
export function reachText({ at, leaf, leaves }: Target, all: number): string {
  switch (at) {
    case "finished":
      return say.reachFinished();
    case "scores":
      return say.reachScores();
    case "parts":
      return say.reachWindow({ all });
    case "leaf":
      return leaf === undefined ? say.reachScored() : say.reachLeaf({ leaves, all, leaf: leafAndPage(leaf) });
  }
}

/** What can be done for a seat that does not finish, in a sentence. */
export function remedyText(remedy: Remedy): string {
  switch (remedy.kind) {
    case "leaves-at-home": {
      const figures = { leaves: remedy.leaves, hours: hoursText(remedy.minutes) };
      return remedy.scores ? say.remedyLeavesAndScoresAtHome(figures) : say.remedyLeavesAtHome(figures);
    }
    case "window-at-home":
      return say.remedyWindowAtHome({ hours: hoursText(remedy.minutes) });
    case "scores-before":
      return remedy.missing === 0
        ? say.remedyScoresEnough({ saves: minutesText(remedy.saves) })
        : say.remedyScoresBefore({ saves: minutesText(remedy.saves), missing: roundedUp(remedy.missing) });
    case "parts-before":
      return remedy.missing === 0
        ? say.remedyPartsEnough({ saves: minutesText(remedy.saves) })
        : say.remedyPartsBefore({ saves: minutesText(remedy.saves), missing: roundedUp(remedy.missing) });
    case "both-before":
      return remedy.missing === 0
        ? say.remedyBothEnough()
        : say.remedyBothBefore({ missing: roundedUp(remedy.missing) });
    case "shorter-kit":
      return say.remedyShorterKit({ kit: remedy.kit.title });
    case "more-sessions":
      return say.remedyMoreSessions({ sessions: remedy.sessions });
  }
}

/** Time that is missing, never told too short: `54 min`. */
export function roundedUp(minutes: number): string {
  return minutesText(Math.ceil(minutes));
}
