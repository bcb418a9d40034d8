import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { findBrowser, launchBrowser } from "../../src/print/browser.ts";
import { serve } from "../offline/serve.ts";
import type { Served } from "../offline/visit.ts";
import { makeProject } from "../site/project.ts";
import { accessSuite } from "./bench-access-suite.ts";
import { awakeSuite } from "./bench-awake-suite.ts";
import { fileSuite } from "./bench-file-suite.ts";
import { keepingSuite } from "./bench-keeping-suite.ts";
import { keyboardSuite } from "./bench-keyboard-suite.ts";
import { measureSuite } from "./bench-measure-suite.ts";
import { movingSuite } from "./bench-moving-suite.ts";
import { promptSuite } from "./bench-prompt-suite.ts";
import { recoverySuite } from "./bench-recovery-suite.ts";

let served: Served;
let close: () => Promise<void>;

beforeAll(async () => {
  const project = makeProject({ demoKits: ["harbour-moon", "little-gull"] });
  const rebuild = (): void => {
    const { code, stderr } = project.build();
    if (code !== 0) throw new Error(stderr);
  };
  rebuild();
  const dist = join(project.folder, "dist");
  const host = await serve(() => dist);
  const browser = await launchBrowser(await findBrowser());
  const change = (path: string, from: string, to: string): void => {
    const text = readFileSync(join(project.folder, path), "utf8");
    if (!text.includes(from)) throw new Error(`${path} has no "${from}"`);
    project.write(path, text.replace(from, to));
  };
  served = { host, browser, rebuild, dist, change };
  close = async () => {
    await browser.close();
    await host.stop();
    project.remove();
  };
});

afterAll(() => close());

movingSuite(() => served);
promptSuite(() => served);
awakeSuite(() => served);
fileSuite(() => served);
recoverySuite(() => served);
measureSuite(() => served);
accessSuite(() => served);
keyboardSuite(() => served);
// Last, for it builds the site again after a change.
keepingSuite(() => served);
