import { createHash } from "node:crypto";
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { SHEET } from "../drawing/true-scale.ts";
import type { KitView } from "../site/kit-view.ts";
import { packetFooter } from "../site/packet-footer.ts";
import { MM_PER_INCH } from "../units/length.ts";
import { findBrowser, launchBrowser } from "./browser.ts";
import { finishPdf } from "./finish-pdf.ts";
import { findOverflow } from "./overflow.ts";
import { PAPERS, type Paper, pageRule } from "./paper.ts";

/** One PDF to print: a page of the built site, on a paper. */
interface PrintJob {
  readonly view: KitView;
  readonly page: string;
  readonly paper: Paper;
  readonly target: string;
  readonly title: string;
}

/** A packet that cannot be printed as it must be. */
export class PrintError extends Error {}

const CACHE = ".cache/packets";
const CSS_PIXELS_PER_MM = 96 / MM_PER_INCH;

/**
 * Prints every kit's packet and large-print table on A4 and US Letter into the built site.
 * Prints only what changed: a PDF is kept under the hash of all that it is made from. @throws PrintError on overflow, or Error without a browser
 */
export async function printPackets(
  output: string,
  views: readonly KitView[],
  log: (line: string) => void = console.log,
): Promise<void> {
  const jobs = views.flatMap((view) => jobsOf(output, view));
  const stale = jobs.filter((job) => !takeFromCache(output, job));
  if (stale.length === 0) return;
  const found = await findBrowser();
  log(`Printing ${stale.length} PDFs with the ${found.source} browser ${found.path}`);
  const browser = await launchBrowser(found);
  try {
    await printAll(browser, output, stale);
  } finally {
    await browser.close();
  }
}

function jobsOf(output: string, view: KitView): PrintJob[] {
  const folder = join(output, "kits", view.slug);
  return PAPERS.flatMap((paper) => [
    {
      view,
      paper,
      page: join(folder, "packet/index.html"),
      target: join(folder, `packet-${paper.name}.pdf`),
      title: `${view.kit.title}: packet`,
    },
    {
      view,
      paper,
      page: join(folder, "packet/large.html"),
      target: join(folder, `table-large-${paper.name}.pdf`),
      title: `${view.kit.title}: large-print table`,
    },
  ]);
}

async function printAll(browser: Browser, output: string, jobs: readonly PrintJob[]): Promise<void> {
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
  }
}

async function printOne(page: Page, job: PrintJob): Promise<Uint8Array> {
  await page.goto(pathToFileURL(resolve(job.page)).href, { waitUntil: "load" });
  await page.addStyleTag({ content: pageRule(job.paper, packetFooter(job.view.kit, job.title, job.paper)) });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const overflow = await page.evaluate(findOverflow);
  if (overflow.length > 0)
    throw new PrintError(
      `${job.page}: would not print at true scale: ${overflow.join("; ")}. Shorten what stands there, or report this kit`,
    );
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
  for (const file of [job.page, join(output, "kits", job.view.slug, "front.svg"), ...styles, ...fonts, ...made])
    hash.update(readFileSync(file));
  hash.update(packetFooter(job.view.kit, job.title, job.paper));
  return join(CACHE, `${hash.digest("hex").slice(0, 32)}.pdf`);
}
