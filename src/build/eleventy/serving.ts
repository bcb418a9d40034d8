import { isLibraryOpen } from "../current-library.ts";
import { foreseen } from "../foreseen.ts";
import { type Run, runServing } from "../stages.ts";
import type { SiteConfig } from "./register.ts";

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
  const turn = async ({ runMode, directories }: Turn, side: Parameters<typeof runServing>[1]): Promise<void> => {
    if (runMode === "build") return;
    const run: Run = { base, output: directories.output, serving: true, stopAtMisfit: false };
    try {
      await runServing(run, side);
    } catch (error) {
      const told = foreseen(error);
      if (told === undefined) throw error;
      console.error(told);
      if (!isLibraryOpen()) process.exit(1);
    }
  };
  config.on("eleventy.before", (one: Turn) => turn(one, "before pages"));
  config.on("eleventy.after", (one: Turn) => turn(one, "after pages"));
}
