import { readFileSync } from "node:fs";
import { join } from "node:path";
import { findBrowser, launchBrowser } from "../../../src/build/print/browser.ts";
import { makeProject } from "../../build/site/project.ts";
import { serve } from "./serve.ts";
import type { Served } from "./visit.ts";

/** Builds a project of fixture kits, serves it and starts a browser; `close` ends all three. */
export async function serveProject(kits: readonly string[]): Promise<{ served: Served; close: () => Promise<void> }> {
  const project = makeProject({ kits });
  const change = (path: string, from: string, to: string): void => {
    const text = readFileSync(join(project.folder, path), "utf8");
    if (!text.includes(from)) throw new Error(`${path} has no "${from}"`);
    project.write(path, text.replace(from, to));
  };
  // The page for missing addresses links through the folder that the host serves below.
  change("content/site.yaml", "/harbour-library/", "/workshop/kits-online/");
  const rebuild = (): void => {
    const { code, stderr } = project.build();
    if (code !== 0) throw new Error(stderr);
  };
  rebuild();
  const dist = join(project.folder, "dist");
  const host = await serve(() => dist);
  const browser = await launchBrowser(await findBrowser());
  return {
    served: { host, browser, rebuild, dist, change },
    close: async () => {
      await browser.close();
      await host.stop();
      project.remove();
    },
  };
}
