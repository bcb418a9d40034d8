import { progress } from "@clack/prompts";
import * as say from "../../words/messages.ts";

/** What tells of the printing as it goes on. */
export interface PrintLog {
  readonly line: (line: string) => void;
  /** What a person should know of how it is printed. */
  readonly note: (line: string) => void;
  /** Called after each PDF. */
  readonly step: (title: string) => void;
}

/** A bar that fills with each PDF where a person looks on, plain lines elsewhere. */
export function printLog(count: number): PrintLog {
  if (!process.stdout.isTTY) return { line: console.log, note: console.warn, step: () => undefined };
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
      bar?.advance(1, say.printStep({ done, count, title }));
      if (done === count) bar?.stop(say.printDone({ count }));
    },
  };
}
