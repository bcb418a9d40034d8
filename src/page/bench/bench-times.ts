import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { dryingNow, dryNow } from "../../core/bench/drying.ts";
import { isFinished } from "../../core/bench/moving.ts";
import { remainingTime, workedAt } from "../../core/bench/pace.ts";
import type { Place } from "../../core/bench/places.ts";
import { reachBy } from "../../core/bench/reach.ts";
import { stopOf, workedSitting } from "../../core/bench/sitting.ts";
import { itemName } from "../../output/views/item-name.ts";
import { timeWords } from "../../words/bench.ts";
import { reachWords } from "../../words/bench-reach.ts";
import { dayTimeText } from "../../words/clock.ts";
import { hoursText } from "../../words/hours.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { make, part } from "./bench-dom.ts";

const MINUTE = 60_000;

/** Writes the times into the page's head: worked and left, how far by the time to stop, what dries and what is dry. */
export function renderTimes(root: HTMLElement, desk: Desk): void {
  const now = Date.now();
  part(root, "time").textContent = timesOf(desk, now);
  part(root, "stop").textContent = stopWords(desk, now);
  part(root, "drying").replaceChildren(...dryingLines(desk, now).map((line) => make("p", "", line)));
  // Spoken where it changes, so written only then.
  const dry = dryWords(desk, now);
  if (part(root, "dry").textContent !== dry) part(root, "dry").textContent = dry;
}

/** Working time so far, and what is left of it. */
function timesOf({ plan, progress }: Desk, now: number): string {
  const worked = workedWords(progress, now);
  if (isFinished(plan, progress)) return say.benchTimeNoneLeft({ worked });
  const { ms, own } = remainingTime(plan, progress);
  if (own) return say.benchTimeOwnPace({ worked, left: timeWords(ms, "about") });
  if (ms === 0) return say.benchTimeUnknown({ worked });
  const estimated = (times: number): string => estimatedText(ms * times);
  return say.benchTimeEstimated({ worked, left: estimated(1), first: estimated(plan.kit.rates.first) });
}

/** All that she worked, with the part of this sitting where there were others before. */
function workedWords(progress: Desk["progress"], now: number): string {
  const all = workedAt(progress.clock, now);
  const worked = timeWords(all, "exact");
  const sitting = workedSitting(progress, now);
  return sitting === undefined || all - sitting < MINUTE
    ? worked
    : say.benchTimesSitting({ worked, sitting: timeWords(sitting, "exact") });
}

/** As on the kit's page, to the quarter hour; below an hour to the minute. */
function estimatedText(ms: number): string {
  return ms < 60 * MINUTE ? timeWords(ms, "about") : hoursText(ms / MINUTE);
}

/** How far she comes by the time to stop; empty where none is set, or all is done. */
export function stopWords({ plan, progress }: Desk, now: number): string {
  const until = stopOf(progress, now);
  if (until === undefined || isFinished(plan, progress)) return "";
  const time = dayTimeText(until, now);
  return until <= now ? say.benchStopPast({ time }) : reachWords(plan, reachBy(plan, progress, until, now), time);
}

/** How much has come about while she did nothing: glue that is dry, the time to stop. */
export function cameAbout({ plan, progress }: Desk): number {
  const now = Date.now();
  return dryNow(plan, progress, now).length + Number((stopOf(progress, now) ?? now + 1) <= now);
}

function dryingLines(desk: Desk, now: number): string[] {
  return dryingNow(desk.plan, desk.progress, now).map(({ item, dry }) =>
    say.benchDrying({
      step: itemName(desk.plan, item, deskStyle(desk)),
      time: dayTimeText(dry, now),
      left: timeWords(Math.max(MINUTE, dry - now), "about"),
    }),
  );
}

/** Until when what is just ticked dries, to be spoken; undefined where it does not. */
export function driesWords({ item }: Place): string | undefined {
  const now = Date.now();
  return item && item.step.dries > 0
    ? say.benchDriesSpoken({ time: dayTimeText(now + MINUTE * item.step.dries, now) })
    : undefined;
}

function dryWords(desk: Desk, now: number): string {
  const dry = dryNow(desk.plan, desk.progress, now).map(({ item }) => itemName(desk.plan, item, deskStyle(desk)));
  return dry.length === 0 ? "" : say.benchDry({ steps: listText(dry) });
}
