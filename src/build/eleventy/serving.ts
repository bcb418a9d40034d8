import { clearBrowsers } from "../browser/browser-leftovers.ts";
import { tellFailure } from "../errors/command.ts";
import { isLibraryOpen } from "../library/current-library.ts";
import { speakFirst } from "../library/first-words.ts";
import { holdServed } from "../making/hold-served.ts";
import { servesPackets } from "../site/served-packets.ts";
import { type Run, runServing } from "../stages.ts";
import type { SiteConfig } from "./site-config.ts";

/** What Eleventy tells at each turn; a build's own run is `build`. */
interface Turn {
  readonly runMode: string;
  readonly directories: { readonly output: string };
}

/**
 * Runs the stages around Eleventy's pages while it serves. What cannot be made is told on the terminal and stops nothing
 * but the first start of a site that has no words.
 */
export function registerServing(config: SiteConfig, base: string): void {
  let held = false;
  const hold = async (output: string): Promise<void> => {
    if (held) return;
    held = true;
    try {
      speakFirst(base);
      clearBrowsers();
      await holdServed(base, output);
    } catch (error) {
      process.exit(tellFailure(error));
    }
  };
  const turn = async ({ runMode, directories }: Turn, side: "before pages" | "after pages"): Promise<void> => {
    if (runMode === "build") return;
    await hold(directories.output);
    const run: Run = {
      base,
      output: directories.output,
      serving: true,
      kits: [],
      stopAtMisfit: false,
      packets: servesPackets(),
    };
    await runServing(run, side, tell);
  };
  config.on("eleventy.before", (one: Turn) => turn(one, "before pages"));
  config.on("eleventy.after", (one: Turn) => turn(one, "after pages"));
}

function tell(error: unknown): void {
  const code = tellFailure(error);
  if (!isLibraryOpen()) process.exit(code);
}
