import { fitSeat } from "../../core/class/fit-seats.ts";
import { timeOf } from "../../core/class/schedule.ts";
import type { RowOf } from "../../core/class/seat-row.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { RowFacts } from "../../output/parts/class/seat-row.ts";
import { timeText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";
import { loadKitOf } from "../shared/kit-data.ts";

/** Whether a seat's piece will be finished in the class, in a sentence; empty where its kit's data cannot be had. `site` is the site's folder. */
export async function rowTime(
  { kit: slug, ...row }: RowOf,
  book: Refit,
  facts: RowFacts,
  site: string,
): Promise<string> {
  const data = await loadKitOf(slug, site).catch(() => undefined);
  if (!data) return "";
  const pace = row.pace ?? facts.pace;
  const { kit } = data;
  const fit = fitSeat({ number: row.seat, kit, book, bookIn: "table", refit: { ...book, units: facts.units }, pace });
  if ("failure" in fit) return say.classRowMisfit({ kit: kit.title });
  const { minutes, short } = timeOf(facts, fit);
  const hours = timeText(Math.ceil(minutes / 5) * 5);
  if (short === 0) return say.classRowFinished({ hours });
  return say.classRowUnfinished({ hours, rest: timeText(Math.ceil(short / 5) * 5) });
}
