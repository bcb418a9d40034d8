import { progress } from "@clack/prompts";
import { timeText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";
import { TimeLeft } from "./time-left.ts";

const MINUTE = 60_000;
/** Where nobody looks on, a line as seldom as this, ms. */
const BETWEEN_LINES = 30_000;

/** What tells of the printing as it goes on. */
export interface PrintLog {
  readonly line: (line: string) => void;
  /** What a person should know of how it is printed. */
  readonly note: (line: string) => void;
  /** Called after each PDF. */
  readonly step: (title: string) => void;
  /** Called when all are printed, or none any more. */
  readonly end: () => void;
}

/** A bar that fills with each PDF where a person looks on, a plain line now and then elsewhere; both with the time left. */
export function printLog(count: number): PrintLog {
  return process.stdout.isTTY ? barLog(count) : linesLog(count);
}

function barLog(count: number): PrintLog {
  const left = new TimeLeft(count);
  let bar: ReturnType<typeof progress> | undefined;
  let done = 0;
  return {
    line: (line) => {
      bar = progress({ max: count, style: "block" });
      bar.start(line);
    },
    note: (line) => console.warn(line),
    step: (title) => {
      done += 1;
      const about = timeLeft(left.step());
      const step = { done, count, title };
      bar?.advance(1, about === undefined ? say.printStep(step) : say.printStepLeft({ ...step, left: about }));
    },
    end: () => bar?.stop(done === count ? say.printDone({ count }) : say.printStopped({ done, count })),
  };
}

/** `now` in ms. */
export function linesLog(
  count: number,
  line: (line: string) => void = console.log,
  now: () => number = () => performance.now(),
): PrintLog {
  const left = new TimeLeft(count, now);
  let told = now();
  let done = 0;
  return {
    line,
    note: (note) => console.warn(note),
    step: () => {
      done += 1;
      const about = timeLeft(left.step());
      if (about === undefined || done === count || now() - told < BETWEEN_LINES) return;
      told = now();
      line(say.printSoFar({ done, count, left: about }));
    },
    end: () => undefined,
  };
}

/** A time left as a person says it; `ms` are milliseconds. */
function timeLeft(ms: number | undefined): string | undefined {
  if (ms === undefined) return undefined;
  return ms < MINUTE ? say.printLeftShort() : say.printLeft({ time: timeText(Math.round(ms / MINUTE)) });
}
