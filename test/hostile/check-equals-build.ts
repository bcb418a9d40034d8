import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { currentLibrary } from "../../src/build/library/current-library.ts";
import { printPackets } from "../../src/build/print/print-packets.ts";
import { STAGES } from "../../src/build/stages.ts";
import { formatMessage } from "../../src/input/files/format-message.ts";
import { speak } from "../../src/words/speak.ts";
import { ENGLISH } from "../english-words.ts";
import { fc } from "../seed.ts";
import { inspect } from "./inspect.ts";
import { randomSites, type SiteFiles } from "./random-site.ts";

const ROOT = join(import.meta.dirname, "../..");

/** How many sites were tried, how many of them could be built, and how many of these were printed. */
export interface Tally {
  tried: number;
  built: number;
  printed: number;
}

/** How many sites are tried and printed; another seed than the tests', and whether there is time for more. */
interface Comparison {
  readonly sites: number;
  readonly print: number;
  readonly seed?: number;
  readonly goesOn?: () => boolean;
}

/**
 * Feeds random sites to the check, and those that pass to the stages of a build; the first `print` of these are printed, too.
 * @throws Error where the check fails in another way than with messages, or a build stops after it passed
 */
export async function compareCheckAndBuild({ sites, print, seed, goesOn }: Comparison): Promise<Tally> {
  const tally: Tally = { tried: 0, built: 0, printed: 0 };
  const property = fc.asyncProperty(randomSites, async (files) => {
    if (goesOn?.() === false) return;
    tally.tried += 1;
    const base = writeSite(files);
    try {
      if (!(await passes(base))) return;
      tally.built += 1;
      await build(base, join(base, "out"));
      if (tally.printed >= print) return;
      tally.printed += 1;
      const { views, classes, settings } = currentLibrary();
      const quiet = () => ({
        line: () => undefined,
        note: () => undefined,
        step: () => undefined,
        end: () => undefined,
      });
      await printPackets(join(base, "out"), views, classes, settings.url, quiet);
    } finally {
      rmSync(base, { recursive: true, force: true });
    }
  });
  await fc.assert(property, { numRuns: sites, endOnFailure: true, ...(seed === undefined ? {} : { seed }) });
  return tally;
}

/** A project of a site's files, with the program's own words. */
function writeSite(files: SiteFiles): string {
  const base = mkdtempSync(join(tmpdir(), "leaflight-random-"));
  cpSync(join(ROOT, "content/words"), join(base, "content/words"), { recursive: true });
  for (const [path, contents] of Object.entries(files)) {
    const file = join(base, "content", path);
    mkdirSync(join(file, ".."), { recursive: true });
    writeFileSync(file, contents);
  }
  return base;
}

/** Whether the check passes. @throws Error where it neither passes nor tells an author what is wrong */
async function passes(base: string): Promise<boolean> {
  const messages = await inspect(base);
  speak(ENGLISH, "en");
  const unclear = messages.find((one) => !(one.file && one.field && one.given && one.allowed && one.remedy));
  if (unclear) throw new Error(`an unclear message: ${formatMessage(unclear)}`);
  return messages.length === 0;
}

/** All stages of a build after the reading but printing. */
async function build(base: string, output: string): Promise<void> {
  const quiet = console.warn;
  console.warn = () => undefined;
  try {
    for (const stage of STAGES)
      if (!["read", "print"].includes(stage.name) && stage.serving !== "only")
        await stage.run({ base, output, serving: false, kits: [], stopAtMisfit: false, packets: true });
  } finally {
    console.warn = quiet;
  }
}
