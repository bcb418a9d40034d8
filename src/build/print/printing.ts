import type { Page } from "puppeteer";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { SHEET } from "../../output/drawing/sheets/true-scale.ts";
import { countedPlan } from "../../output/parts/print-plan.ts";
import { PAGE_ROOM, pageRule } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { BrowserError } from "../browser/browser-error.ts";
import type { FoundBrowser } from "../browser/find-browser.ts";
import { BOUNDS, type Bounds, type StartedBrowser, startBrowser } from "../browser/start-browser.ts";
import { BuildError } from "../errors/build-error.ts";
import { countPages, leaveOut, writePlan } from "./count-pages.ts";
import { finishPdf } from "./finish-pdf.ts";
import { findOverflow } from "./overflow.ts";
import { OverflowError, PrintError } from "./print-error.ts";
import type { PrintJob } from "./print-job.ts";
import { Wall } from "./wall.ts";

const CSS_PIXELS_PER_MM = 96 / MM_PER_INCH;

/** What a run of printing works with. */
export interface Printing {
  readonly found: FoundBrowser;
  /** The built site. */
  readonly output: string;
  /** The site's address, where it has one. */
  readonly address: string | undefined;
  /** Told to a person who waits. */
  readonly note: (line: string) => void;
  readonly bounds?: Bounds;
}

/** A browser with a page behind the wall. */
interface Press {
  readonly started: StartedBrowser;
  readonly page: Page;
  readonly wall: Wall;
}

/**
 * Prints pages one after the other and hands each PDF on. A browser that ends meanwhile is replaced once for a page.
 * @throws PrintError on overflow and on a page that asks for more than its site; BrowserError
 */
export async function printEach(
  printing: Printing,
  jobs: readonly PrintJob[],
  done: (job: PrintJob, pdf: Uint8Array) => void,
): Promise<void> {
  let press = await startPress(printing);
  // What holds for the first browser was told of it.
  const again = { ...printing, note: () => undefined };
  try {
    for (const job of jobs) {
      let raw: Uint8Array;
      try {
        raw = await printOne(press, job, printing);
      } catch (error) {
        if (!(error instanceof BrowserError && error.died)) throw error;
        await press.started.close();
        press = await startPress(again);
        raw = await printOne(press, job, printing);
      }
      done(job, await finished(raw, job, printing));
    }
  } finally {
    await press.started.close();
  }
}

async function startPress({ found, output, note, bounds = BOUNDS }: Printing): Promise<Press> {
  const started = await startBrowser(found, note, bounds);
  try {
    return await started.guard(
      (async () => {
        const page = await started.browser.newPage();
        page.setDefaultTimeout(bounds.answer);
        await page.setViewport({
          width: Math.ceil(SHEET.width * CSS_PIXELS_PER_MM),
          height: Math.ceil(SHEET.height * CSS_PIXELS_PER_MM),
        });
        const wall = await Wall.around(page, output);
        await page.emulateMediaType("print");
        return { started, page, wall };
      })(),
    );
  } catch (error) {
    await started.close();
    throw error;
  }
}

async function printOne({ started, page, wall }: Press, job: PrintJob, { found }: Printing): Promise<Uint8Array> {
  try {
    await started.guard(wall.open(job.page, pageRule(job.paper, job.footer)));
    await started.guard(page.evaluate(() => document.fonts.ready.then(() => undefined)));
    const blocked = wall.blocked();
    if (blocked.length > 0)
      throw new PrintError(
        say.printBlocked({ page: job.of.name, addresses: blocked.slice(0, 5).join(", ").slice(0, 500) }),
      );
    if (job.without) await started.guard(page.evaluate(leaveOut, job.without));
    const counted = await started.guard(page.evaluate(countPages, PAGE_ROOM));
    if (counted) await started.guard(page.evaluate(writePlan, String(countedPlan(counted.sheets, counted.pages))));
    const overflow = await started.guard(page.evaluate(findOverflow));
    if (overflow.length > 0) throw new OverflowError(job.of, overflow);
    const print = (): Promise<Uint8Array> =>
      started.guard(
        page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: 0 }),
      );
    const pdf = await print();
    if (!counted) return pdf;
    // A cover that counted wrong is written anew from what was printed.
    const { gauge, strips, templates } = counted.sheets;
    const pages = pagesIn(pdf) - gauge - strips - templates;
    if (pages === counted.pages) return pdf;
    await started.guard(page.evaluate(writePlan, String(countedPlan(counted.sheets, pages))));
    return await print();
  } catch (error) {
    throw error instanceof BuildError ? error : failed(error, job, found);
  }
}

/** Pages of a PDF as Chromium writes it: each is a dictionary that says so (ISO 32000 7.7.3.3 Table 31). */
function pagesIn(pdf: Uint8Array): number {
  return (
    Buffer.from(pdf)
      .toString("latin1")
      .match(/\/Type \/Page\b(?!s)/g)?.length ?? 0
  );
}

async function finished(raw: Uint8Array, job: PrintJob, { found, address }: Printing): Promise<Uint8Array> {
  try {
    return await finishPdf(raw, job.title, address);
  } catch (error) {
    throw failed(error, job, found);
  }
}

function failed(error: unknown, { of }: PrintJob, { path }: FoundBrowser): PrintError {
  const fault = (error instanceof Error ? error.message : String(error)).split("\n")[0]!.slice(0, 200);
  return new PrintError(say.printFailed({ page: of.name, path, fault }));
}
