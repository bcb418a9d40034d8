import { countedPlan } from "../../output/parts/print-plan.ts";
import { PAGE_ROOM, pageRule } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { type CountedPacket, countPages, leaveOut, writePlan } from "./count-pages.ts";
import { pagesIn } from "./count-pdf-pages.ts";
import { findOverflow } from "./overflow.ts";
import { changeRule, ruleOfTwo } from "./page-rule.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { Press } from "./press.ts";
import { OverflowError, PrintError } from "./print-error.ts";
import type { PrintJob } from "./print-job.ts";
import { setShort } from "./set-short.ts";
import type { Sitting } from "./sittings.ts";
import { partPapers } from "./two-papers.ts";

/** A PDF as the browser writes it, or what it was parted into. */
export interface RawPdf {
  readonly job: PrintJob;
  readonly pdf: Uint8Array | PdfFile;
}

/** Opens the page of a sitting and prints it for each of its jobs. @throws PrintError, BrowserError */
export async function* printSitting(press: Press, sitting: Sitting): AsyncGenerator<RawPdf> {
  await openPage(press, sitting[0]!);
  for (const edition of Map.groupBy(sitting, ({ edition }) => edition).values()) {
    const counted = await makeReady(press, edition[0]!);
    yield* printEdition(press, edition, counted);
  }
}

/** Two papers come from one printing, where that can be parted. */
async function* printEdition(
  press: Press,
  jobs: readonly PrintJob[],
  counted: CountedPacket | undefined,
): AsyncGenerator<RawPdf> {
  const both = jobs[0]!.both;
  if (both) {
    const [one, other] = both;
    const pdf = await printCounted(press, ruleOfTwo(one.paper, one.footer, other.footer), counted);
    const parted = partPapers(pdf, one.paper, other.paper);
    if (parted) {
      for (const job of jobs) yield { job, pdf: parted[job.paper.name === one.paper.name ? 0 : 1] };
      return;
    }
  }
  for (const job of jobs) yield { job, pdf: await printCounted(press, pageRule(job.paper, job.footer), counted) };
}

async function printCounted(press: Press, rule: string, counted: CountedPacket | undefined): Promise<Uint8Array> {
  await press.started.guard(press.page.evaluate(changeRule, rule));
  const pdf = await print(press);
  if (!counted) return pdf;
  const pages = pagesIn(pdf) - sheetsOf(counted);
  if (pages === counted.pages) return pdf;
  // A cover that counted wrong is written anew from what was printed.
  await writeCounted(press, { ...counted, pages });
  return await print(press);
}

async function openPage({ started, page, wall }: Press, { page: file, of, paper, footer }: PrintJob): Promise<void> {
  await started.guard(wall.open(file, pageRule(paper, footer)));
  await started.guard(page.evaluate(() => document.fonts.ready.then(() => undefined)));
  const blocked = wall.blocked();
  if (blocked.length > 0)
    throw new PrintError(say.printBlocked({ page: of.name, addresses: blocked.slice(0, 5).join(", ").slice(0, 500) }));
}

/** Changes the page to its edition, and writes its plan; papers have the same room, so it holds for all of them. */
async function makeReady(press: Press, { of, edition }: PrintJob): Promise<CountedPacket | undefined> {
  const { started, page } = press;
  if (edition === "bench") await started.guard(page.evaluate(leaveOut, "strips" as const));
  if (edition === "short") await started.guard(page.evaluate(setShort));
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
