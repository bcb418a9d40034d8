import { tellFailure } from "../errors/command.ts";
import { isLibraryOpen } from "../library/current-library.ts";
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
  const turn = async ({ runMode, directories }: Turn, side: "before pages" | "after pages"): Promise<void> => {
    if (runMode === "build") return;
    const run: Run = { base, output: directories.output, serving: true, stopAtMisfit: false };
    await runServing(run, side, tell);
  };
  config.on("eleventy.before", (one: Turn) => turn(one, "before pages"));
  config.on("eleventy.after", (one: Turn) => turn(one, "after pages"));
}

function tell(error: unknown): void {
  const code = tellFailure(error);
  if (!isLibraryOpen()) process.exit(code);
}
