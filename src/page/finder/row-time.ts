import type { RowOf } from "../../core/class/seat-row.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { RowFacts } from "../../output/parts/class/seat-row.ts";
import { timeText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";
import { loadKitOf } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { type Judge, loadJudge } from "./judge-scripts.ts";

/** Whether a seat's piece will be finished in the class, in a sentence; empty where what works it out cannot be had. `site` is the site's folder. */
export async function rowTime(
  { kit: slug, seat: number, pace, foldStyle }: RowOf,
  book: Refit,
  facts: RowFacts,
  site: string,
): Promise<string> {
  try {
    const [{ seatTime }, { kit }] = await Promise.all([loadJudge(site), loadKitOf(slug, site)]);
    const refit = { ...book, units: facts.units, ...(foldStyle ? { foldStyle } : {}) };
    return told(seatTime(facts, { number, kit, book, bookIn: "table", refit, pace: pace ?? facts.pace }), kit.title);
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    return "";
  }
}

/** To five minutes, never told too short. */
function told(time: ReturnType<Judge["seatTime"]>, kit: string): string {
  const up = (minutes: number): string => timeText(Math.ceil(minutes / 5) * 5);
  if (!time) return say.classRowMisfit({ kit });
  const { minutes, short } = time;
  return short === 0
    ? say.classRowFinished({ hours: up(minutes) })
    : say.classRowUnfinished({ hours: up(minutes), rest: up(short) });
}
