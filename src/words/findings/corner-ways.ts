import type { CornerTrouble, CornerTroubleWithWays } from "../../core/makeability/corner-ways.ts";
import type { WayOut } from "../../core/makeability/ways.ts";
import { angleText } from "../angles.ts";
import * as say from "../messages.ts";
import { decimal } from "../numbers.ts";
import type { Telling } from "./failure-figures.ts";
import { changeText } from "./makeability.ts";

/** What an author is told on the terminal of a kit that is folded by corners: the best way out of each trouble. The troubles themselves are told as warnings. */
export function cornerLines(troubles: readonly CornerTroubleWithWays[], telling: Telling): string[] {
  return troubles.flatMap(({ trouble, ways }) => {
    const way = cornerWayTexts(trouble, ways, telling)[0];
    return way === undefined ? [] : [say.makeableLineHelp({ against: againstText(trouble), way })];
  });
}

/** The ways out of a trouble, but those whose figures read the same with and without them. */
export function cornerWayTexts({ kind }: CornerTrouble, ways: readonly WayOut[], telling: Telling): string[] {
  return ways.flatMap((way) => {
    const [after, before] = [figureText(kind, way.after), figureText(kind, way.before)];
    if (after === before) return [];
    return [WAYS[kind]({ offer: changeText(way.change, telling), after, before, count: way.after })];
  });
}

function againstText({ kind }: CornerTrouble): string {
  switch (kind) {
    case "unseen":
      return say.makeableAgainstUnseen();
    case "merged":
      return say.makeableAgainstSlivers();
    case "turned":
      return say.makeableAgainstTurned();
    case "springs-open":
      return say.makeableAgainstSpringsOpen();
  }
}

const WAYS = {
  unseen: say.makeableWayUnseen,
  merged: say.makeableWayMerged,
  turned: say.makeableWayManyCuts,
  "springs-open": say.makeableWaySpringsOpen,
} as const;

function figureText(kind: CornerTrouble["kind"], figure: number): string {
  return kind === "springs-open" ? angleText(figure) : decimal(String(figure));
}
