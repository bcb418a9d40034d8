import { createHash } from "node:crypto";
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { SHEET } from "../../output/drawing/sheets/true-scale.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { PAPERS, type Paper, pageRule } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { findBrowser, launchBrowser } from "./browser.ts";
import { finishPdf } from "./finish-pdf.ts";
import { findOverflow, sayOverflow } from "./overflow.ts";
import { PrintError } from "./print-error.ts";

/** One PDF to print: a page of the built site, on a paper. */
export interface PrintJob {
  readonly page: string;
  /** Pictures that the page shows. */
  readonly pictures: readonly string[];
  readonly paper: Paper;
  readonly target: string;
  readonly title: string;
  /** What stands at the foot of every page. */
  readonly footer: string;
}

const CACHE = ".cache/packets";
const CSS_PIXELS_PER_MM = 96 / MM_PER_INCH;

/** What tells of the printing as it goes on. */
export interface PrintLog {
  readonly line: (line: string) => void;
  /** Called after each PDF. */
  readonly step: (title: string) => void;
}

/**
 * Prints into the built site what changed: a PDF is kept under the hash of all that it is made from.
 * @throws PrintError on overflow, or without a browser
 */
export async function printJobs(
  output: string,
  jobs: readonly PrintJob[],
  log: (count: number) => PrintLog,
): Promise<void> {
  const stale = jobs.filter((job) => !takeFromCache(output, job));
  if (stale.length === 0) return;
  const { line, step } = log(stale.length);
  const found = await findBrowser();
  line(say.printStart({ count: stale.length, browser: found.source, path: found.path }));
  const browser = await launchBrowser(found);
  try {
    await printAll(browser, output, stale, step);
  } finally {
    await browser.close();
  }
}

/** Every kit's packet and large-print table on A4 and US Letter. */
export function kitJobs(output: string, { slug, kit }: KitView): PrintJob[] {
  const folder = join(output, "kits", slug);
  return PAPERS.flatMap((paper) =>
    [
      { page: "packet/index.html", target: `packet-${paper.name}.pdf`, title: say.packetTitle({ title: kit.title }) },
      {
        page: "packet/large.html",
        target: `table-large-${paper.name}.pdf`,
        title: say.packetLargeTitle({ title: kit.title }),
      },
    ].map(({ page, target, title }) => ({
      page: join(folder, page),
      pictures: [join(folder, "front.svg")],
      paper,
      target: join(folder, target),
      title,
      footer: packetFooter(kit, title, paper),
    })),
  );
}

async function printAll(
  browser: Browser,
  output: string,
  jobs: readonly PrintJob[],
  step: (title: string) => void,
): Promise<void> {
  const page = await browser.newPage();
  // The page rule is added here, by the printer; the page itself allows no inline style.
  await page.setBypassCSP(true);
  await page.setViewport({
    width: Math.ceil(SHEET.width * CSS_PIXELS_PER_MM),
    height: Math.ceil(SHEET.height * CSS_PIXELS_PER_MM),
  });
  await page.emulateMediaType("print");
  for (const job of jobs) {
    const pdf = await printOne(page, job);
    writeFileSync(job.target, pdf);
    mkdirSync(CACHE, { recursive: true });
    writeFileSync(cachePath(output, job), pdf);
    step(job.title);
  }
}

async function printOne(page: Page, job: PrintJob): Promise<Uint8Array> {
  await page.goto(pathToFileURL(resolve(job.page)).href, { waitUntil: "load" });
  await page.addStyleTag({ content: pageRule(job.paper, job.footer) });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const overflow = await page.evaluate(findOverflow);
  if (overflow.length > 0)
    throw new PrintError(say.printOverflow({ page: job.page, boxes: overflow.map(sayOverflow).join("; ") }));
  const raw = await page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged: true,
    outline: true,
    timeout: 120_000,
  });
  return finishPdf(raw, job.title);
}

function takeFromCache(output: string, job: PrintJob): boolean {
  const cached = cachePath(output, job);
  if (!existsSync(cached)) return false;
  copyFileSync(cached, job.target);
  return true;
}

/** Named by all that the PDF is made from: the page, the picture, the style sheets and the printing itself. */
function cachePath(output: string, job: PrintJob): string {
  const hash = createHash("sha256");
  const here = import.meta.dirname;
  const made = readdirSync(here)
    .sort()
    .map((file) => join(here, file));
  const fonts = readdirSync(join(output, "assets/fonts"))
    .sort()
    .map((file) => join(output, "assets/fonts", file));
  const styles = readdirSync(join(output, "bundle"))
    .sort()
    .map((file) => join(output, "bundle", file));
  for (const file of [job.page, ...job.pictures, ...styles, ...fonts, ...made]) hash.update(readFileSync(file));
  hash.update(JSON.stringify([job.title, job.footer, job.paper]));
  return join(CACHE, `${hash.digest("hex").slice(0, 32)}.pdf`);
}
