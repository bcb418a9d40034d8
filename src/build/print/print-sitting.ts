import { countedPlan } from "../../output/parts/print-plan.ts";
import { PAGE_ROOM, pageRule } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { type CountedPacket, countPages, leaveOut, writePlan } from "./count-pages.ts";
import { pagesIn } from "./count-pdf-pages.ts";
import { findOverflow } from "./overflow.ts";
import { changePaper } from "./page-rule.ts";
import type { Press } from "./press.ts";
import { OverflowError, PrintError } from "./print-error.ts";
import type { PrintJob } from "./print-job.ts";
import type { Sitting } from "./sittings.ts";

/** A PDF as the browser writes it. */
export interface RawPdf {
  readonly job: PrintJob;
  readonly pdf: Uint8Array;
}

/** Opens the page of a sitting and prints it for each of its jobs. @throws PrintError, BrowserError */
export async function* printSitting(press: Press, sitting: Sitting): AsyncGenerator<RawPdf> {
  const [first] = sitting;
  await openPage(press, first!);
  let counted: CountedPacket | undefined;
  let before = first!;
  for (const job of sitting) {
    if (job !== first) await press.started.guard(press.page.evaluate(changePaper, pageRule(job.paper, job.footer)));
    if (job === first || job.without !== before.without) counted = await makeReady(press, job);
    before = job;
    let pdf = await print(press);
    const pages = counted && pagesIn(pdf) - sheetsOf(counted);
    if (counted && pages !== undefined && pages !== counted.pages) {
      // A cover that counted wrong is written anew from what was printed.
      counted = { ...counted, pages };
      await writeCounted(press, counted);
      pdf = await print(press);
    }
    yield { job, pdf };
  }
}

async function openPage({ started, page, wall }: Press, { page: file, of, paper, footer }: PrintJob): Promise<void> {
  await started.guard(wall.open(file, pageRule(paper, footer)));
  await started.guard(page.evaluate(() => document.fonts.ready.then(() => undefined)));
  const blocked = wall.blocked();
  if (blocked.length > 0)
    throw new PrintError(say.printBlocked({ page: of.name, addresses: blocked.slice(0, 5).join(", ").slice(0, 500) }));
}

/** Leaves out what an edition leaves out, and writes its plan; papers have the same room, so it holds for all of them. */
async function makeReady(press: Press, { of, without }: PrintJob): Promise<CountedPacket | undefined> {
  const { started, page } = press;
  if (without) await started.guard(page.evaluate(leaveOut, without));
  const counted = await started.guard(page.evaluate(countPages, PAGE_ROOM));
  if (counted) await writeCounted(press, counted);
  const overflow = await started.guard(page.evaluate(findOverflow));
  if (overflow.length > 0) throw new OverflowError(of, overflow);
  return counted;
}

async function writeCounted({ started, page }: Press, { sheets, pages }: CountedPacket): Promise<void> {
  await started.guard(page.evaluate(writePlan, String(countedPlan(sheets, pages))));
}

function sheetsOf({ sheets: { gauge, strips, templates } }: CountedPacket): number {
  return gauge + strips + templates;
}

function print({ started, page }: Press): Promise<Uint8Array> {
  return started.guard(
    page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: 0 }),
  );
}
