import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { findBrowser, launchBrowser } from "../../src/print/browser.ts";
import { finderSuite } from "../finder/finder-suite.ts";
import { makeProject } from "../site/project.ts";
import { offlineSuite } from "./offline-suite.ts";
import { policySuite } from "./policy-suite.ts";
import { serve } from "./serve.ts";
import type { Served } from "./visit.ts";

let served: Served;
let close: () => Promise<void>;

beforeAll(async () => {
  const project = makeProject({ demoKits: ["harbour-moon", "little-gull", "tide-and-lamp"] });
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
  served = { host, browser, rebuild, dist, change };
  close = async () => {
    await browser.close();
    await host.stop();
    project.remove();
  };
});

afterAll(() => close());

finderSuite(() => served);
policySuite(() => served);
offlineSuite(() => served);
