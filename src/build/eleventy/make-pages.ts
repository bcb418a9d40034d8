import Eleventy from "@11ty/eleventy";
import { holdSource, type PageSource } from "../library/page-source.ts";

/** Has Eleventy make the pages that are wanted, below `output`. */
export async function makePages(output: string, source: PageSource): Promise<void> {
  holdSource(source);
  const eleventy = new Eleventy(undefined, output, { configPath: ".eleventy.js", quietMode: true });
  // What fails in it is told by the command, without a trace.
  eleventy.logger.overrideLogger({ log: () => {}, info: () => {}, warn: () => {}, error: () => {} });
  await eleventy.init();
  // Nor does it tell which filters took long.
  eleventy.bench.get("Configuration").setMinimumThresholdMs(0);
  await eleventy.write();
}
