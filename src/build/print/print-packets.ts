import type { ClassView } from "../../output/views/class/class-view.ts";
import type { KitFacts } from "../../output/views/kit-card.ts";
import { classJobs } from "./class-packets.ts";
import { countClass } from "./class-plan.ts";
import { kitJobs } from "./kit-jobs.ts";
import { mergeSeats } from "./merge-seats.ts";
import { printJobs } from "./print-jobs.ts";
import { type PrintLog, printLog } from "./progress.ts";

/**
 * Prints every kit's and every class's packets into the built site, each class's seats as files of all,
 * and what is to print of it. `address` is the site's,
 * where it has one. @throws PrintError on overflow; BrowserError without a browser that prints
 */
export async function printPackets(
  output: string,
  kits: readonly KitFacts[],
  classes: readonly ClassView[],
  address: string | undefined,
  log: (count: number) => PrintLog = printLog,
): Promise<void> {
  const jobs = [...kits.flatMap((kit) => kitJobs(output, kit)), ...classes.flatMap((view) => classJobs(output, view))];
  await printJobs(output, jobs, { address, log });
  for (const view of classes) await mergeSeats(output, view);
  await printJobs(
    output,
    classes.flatMap((view) => countClass(output, view)),
    { address, log },
  );
}
