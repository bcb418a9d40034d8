import { join } from "node:path";
import { FOLDER } from "../site/address.ts";
import { openBrowser } from "../site/open-browser.ts";
import { makeProject } from "../site/project.ts";
import { serve } from "../site/serve.ts";
import { AT_ONCE, FRAME } from "./bounds.ts";
import { firstVisit, keptAtVisits, sumOf } from "./first-visit.ts";
import { findAmongMany } from "./many-kits.ts";
import { middleAndMost } from "./numbers.ts";
import { FIRST_PAGES, PAGES, TYPED } from "./scenes.ts";
import { bytesOf, scriptsOf, totalOf } from "./sizes.ts";
import { type KeyTimes, typeFigures } from "./typing.ts";

const ROUNDS = 8;

const project = makeProject({ kits: ["harbour-moon", "little-gull"] });
try {
  const built = project.build();
  if (built.code !== 0) throw new Error(built.stderr);
  const site = join(project.folder, "dist");
  console.log(
    "Scripts of a page, gzip -9, bytes (the view in the round and a kit's own data come when they are asked for)",
  );
  const tell = (bytes: number, of: string): void => console.log(`${String(bytes).padStart(8)}  ${of}`);
  for (const page of PAGES) tell(totalOf(scriptsOf(site, page)), page);
  for (const name of ["refit", "fit-packet"])
    tell(bytesOf(site, `assets/scripts/${name}.js`), `${name}.js, for a reader's book`);
  const host = await serve(() => site, FOLDER);
  const browser = await openBrowser();
  console.log("\nA first visit, packed on the line, bytes (before something is opened)");
  for (const page of FIRST_PAGES) tell(sumOf(await firstVisit(browser, { site: host.site, dist: site }, page)), page);
  console.log("\nKept on a device, bytes");
  for (const [page, bytes] of await keptAtVisits(browser, host.site)) tell(bytes, page);
  const found = await findAmongMany(browser, host, site);
  console.log("\nThe finder among 100 kits, on a phone that is 4 times slower");
  tell(found.indexBytes, "bytes of the index for one kit, at most");
  tell(found.asked, "kits that were asked");
  tell(Math.round(found.answered), "ms to the answer");
  tell(Math.round(found.longest), "ms, the longest time without an answer to a touch");
  for (const { name, address, fields } of TYPED) {
    const page = await browser.newPage();
    await page.goto(`${host.site}${address}`, { waitUntil: "networkidle0" });
    const times = await typeFigures(page, fields, ROUNDS);
    printTimes(name, times);
    holdBounds(times);
    await page.close();
  }
  await browser.close();
  await host.stop();
} finally {
  project.remove();
}

/** The machine must be idle for these; the tests compare with a loop instead. */
function holdBounds(times: readonly KeyTimes[]): void {
  const computed = middleAndMost(times.map((one) => one.computed)).median;
  const painted = middleAndMost(times.map((one) => one.painted)).median;
  if (computed < FRAME && painted < AT_ONCE) return;
  console.error(`slower than ${FRAME} ms to computed and ${AT_ONCE} ms to painted`);
  process.exitCode = 1;
}

function printTimes(name: string, times: readonly KeyTimes[]): void {
  console.log(`\n${name}: ms from a key in the fit panel, median / worst of ${ROUNDS} keys a field`);
  console.log(`${"field".padEnd(16)}${["computed", "painted", "settled"].map((word) => word.padStart(18)).join("")}`);
  for (const field of [...new Set(times.map((one) => one.field)), "all"]) {
    const own = times.filter((one) => field === "all" || one.field === field);
    const cells = (["computed", "painted", "settled"] as const).map((of) => {
      const { median, worst } = middleAndMost(own.map((one) => one[of]));
      return `${median.toFixed(1)} / ${worst.toFixed(1)}`.padStart(18);
    });
    console.log(`${field.padEnd(16)}${cells.join("")}`);
  }
}
