import type { ClassView } from "../../output/views/class/class-view.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { classJobs, mergeSeats } from "./class-packets.ts";
import { kitJobs, type PrintLog, printJobs } from "./print-jobs.ts";
import { printLog } from "./progress.ts";

/**
 * Prints every kit's and every class's packets into the built site, and each class's seats as one file.
 * @throws PrintError on overflow, or without a browser
 */
export async function printPackets(
  output: string,
  views: readonly KitView[],
  classes: readonly ClassView[],
  log: (count: number) => PrintLog = printLog,
): Promise<void> {
  const jobs = [
    ...views.flatMap((view) => kitJobs(output, view)),
    ...classes.flatMap((view) => classJobs(output, view)),
  ];
  await printJobs(output, jobs, log);
  for (const view of classes) await mergeSeats(output, view);
}
