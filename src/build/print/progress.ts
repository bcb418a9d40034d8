import { progress } from "@clack/prompts";
import * as say from "../../words/messages.ts";
import type { PrintLog } from "./print-jobs.ts";

/** A bar that fills with each PDF where a person looks on, plain lines elsewhere. */
export function printLog(count: number): PrintLog {
  if (!process.stdout.isTTY) return { line: (line) => console.log(line), step: () => undefined };
  let bar: ReturnType<typeof progress> | undefined;
  let done = 0;
  return {
    line: (line) => {
      bar = progress({ max: count, style: "block" });
      bar.start(line);
    },
    step: (title) => {
      done += 1;
      bar?.advance(1, say.printStep({ done, count, title }));
      if (done === count) bar?.stop(say.printDone({ count }));
    },
  };
}
