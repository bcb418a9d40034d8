import { writeFileSync } from "node:fs";
import * as say from "../../words/messages.ts";
import { browserVersion, findBrowser } from "../browser/find-browser.ts";
import { KeptFiles } from "../kept/kept-files.ts";
import { PacketKeys } from "./packet-keys.ts";
import type { PrintJob } from "./print-job.ts";
import { printEach } from "./printing.ts";
import type { PrintLog } from "./progress.ts";

const CACHE = ".cache/packets";

/**
 * Prints into the built site what changed: a PDF is kept under the hash of all that it is made from. `address` is the site's.
 * @throws PrintError on overflow, and where a page asks for more than its site; BrowserError without a browser that prints
 */
export async function printJobs(
  output: string,
  jobs: readonly PrintJob[],
  { address, log }: { readonly address: string | undefined; readonly log: (count: number) => PrintLog },
): Promise<void> {
  if (jobs.length === 0) return;
  const keys = new PacketKeys(output, await browserVersion(), address);
  const kept = new KeptFiles(CACHE, "pdf");
  const stale = jobs.filter((job) => {
    const pdf = kept.take(keys.of(job));
    if (pdf) writeFileSync(job.target, pdf);
    return pdf === undefined;
  });
  if (stale.length > 0) {
    const { line, note, step, end } = log(stale.length);
    const found = await findBrowser();
    line(say.printStart({ count: stale.length, browser: found.source, path: found.path }));
    await printEach({ found, output, address, note }, stale, (job, pdf) => {
      writeFileSync(job.target, pdf);
      kept.put(keys.of(job), pdf);
      step(job.title);
    }).finally(end);
  }
  kept.close();
}
