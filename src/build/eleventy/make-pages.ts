import { join } from "node:path";
import Eleventy from "@11ty/eleventy";
import { holdSource, type PageSource } from "../library/page-source.ts";

/** What pages are made by: modules, and folders of the program that are read. */
export const PAGES_MADE_BY = {
  modules: [import.meta.filename, join(import.meta.dirname, "register.ts")],
  folders: ["layouts", ".eleventy.js"],
} as const;

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
