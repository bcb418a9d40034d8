import { globSync, readFileSync, rmSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { PDFDocument } from "@cantoo/pdf-lib";
import { commandWords } from "../../site/command.ts";
import { openBrowser } from "../../site/open-browser.ts";
import { makeProject, PACKETS, type Project } from "../../site/project.ts";
import type { Figure } from "../figure.ts";
import { middleAndMost } from "../numbers.ts";
import { measure } from "../process/measured.ts";
import type { Scale } from "../scale.ts";

const KITS = ["harbour-moon", "little-gull"];

/** The page that a PDF is printed from. */
const PRINTED_FROM = { packet: "index.html", "table-large": "large.html", "table-compact": "large.html" } as const;

/** Pages printed in a second with one page and two at work, as against Chromium that opens the same pages one after the other and prints them. */
export async function measurePackets({ quick }: Scale): Promise<Figure[]> {
  const project = makeProject({ kits: KITS });
  try {
    await build(project, ["--no-packets"], 1);
    const speeds = { raw: [] as number[], one: [] as number[], two: [] as number[] };
    // In turns, as other programs may hold the machine up for a while.
    for (let turn = 0; turn < (quick ? 1 : 3); turn += 1) {
      speeds.one.push(await ourSpeed(project, 1));
      speeds.raw.push(await rawSpeed(join(project.folder, "dist")));
      speeds.two.push(await ourSpeed(project, 2));
      speeds.raw.push(await rawSpeed(join(project.folder, "dist")));
    }
    const raw = middleAndMost(speeds.raw).median;
    return [
      { line: "packets-one", value: middleAndMost(speeds.one).median / raw },
      { line: "packets-two", value: middleAndMost(speeds.two).median / raw },
    ];
  } finally {
    project.remove();
  }
}

/** Builds with so many browsers at work, with no packet kept from before. */
async function build({ folder }: Project, options: readonly string[], presses: number): Promise<void> {
  rmSync(join(folder, PACKETS), { recursive: true, force: true });
  await measure(folder, commandWords("src/build/build.ts", ...options), { LEAFLIGHT_PRESSES: String(presses) });
}

/** Pages a second that a build prints, from its first file to its last: what it makes besides is not printing. */
async function ourSpeed(project: Project, presses: number): Promise<number> {
  await build(project, [], presses);
  const [first, ...others] = pdfsOf(join(project.folder, "dist"))
    .map((pdf) => ({ pdf, written: statSync(pdf).mtimeMs }))
    .toSorted((a, b) => a.written - b.written);
  const seconds = (others.at(-1)!.written - first!.written) / 1000;
  return sum(await Promise.all(others.map(({ pdf }) => pagesOf(readFileSync(pdf))))) / seconds;
}

/** The same of Chromium alone. */
async function rawSpeed(dist: string): Promise<number> {
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    const printed: Uint8Array[] = [];
    const start = performance.now();
    for (const pdf of pdfsOf(dist)) {
      await page.goto(pathToFileURL(pageOf(pdf)).href, { waitUntil: "load" });
      const format = pdf.endsWith("-letter.pdf") ? "letter" : "a4";
      printed.push(await page.pdf({ format, printBackground: true, tagged: true, outline: true, timeout: 0 }));
    }
    const seconds = (performance.now() - start) / 1000;
    return sum(await Promise.all(printed.map(pagesOf))) / seconds;
  } finally {
    await browser.close();
  }
}

function pdfsOf(dist: string): string[] {
  return globSync("kits/*/*.pdf", { cwd: dist })
    .toSorted()
    .map((pdf) => join(dist, pdf));
}

function pageOf(pdf: string): string {
  const name = basename(pdf).replace(/-(a4|letter)\.pdf$/, "");
  const own = PRINTED_FROM[name as keyof typeof PRINTED_FROM] ?? PRINTED_FROM.packet;
  return join(dirname(pdf), "packet", own);
}

async function pagesOf(pdf: Uint8Array): Promise<number> {
  return (await PDFDocument.load(pdf, { updateMetadata: false })).getPageCount();
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
