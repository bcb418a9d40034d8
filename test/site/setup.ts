import { cpSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import type { TestProject } from "vitest/node";
import { ADDRESS } from "./address.ts";
import { openBrowser } from "./open-browser.ts";
import { writeOwnKits } from "./own-kits.ts";
import { MADE, makeProject, PACKETS, type Project } from "./project.ts";
import type { BuiltProject } from "./shared-site.ts";

/** What earlier runs printed and made; a packet whose page, styles or printing changed is printed again. */
const KEPT = [PACKETS, MADE].map((place) => join(import.meta.dirname, "../../.cache/test-kept", basename(place)));

/** Builds what the suites share and starts their browser, once for a run. */
export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  const site = makeProject({ classes: true, kept: KEPT });
  const ownKits = makeProject({ kits: [], kept: KEPT });
  writeOwnKits(ownKits);
  const [built, own, browser] = await Promise.all([build(site), build(ownKits), openBrowser()]);
  provide("site", built);
  provide("ownKits", own);
  provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    for (const place of KEPT) {
      rmSync(place, { recursive: true, force: true });
      for (const { folder } of [site, ownKits])
        cpSync(join(folder, ".cache", basename(place)), place, { recursive: true });
    }
    for (const project of [site, ownKits]) project.remove();
  };
}

async function build(project: Project): Promise<BuiltProject> {
  const { code, stdout, stderr } = await project.buildAside({ LEAFLIGHT_SITE_URL: ADDRESS });
  if (code !== 0) throw new Error(`the site that the tests share was not built:\n${stdout}\n${stderr}`);
  return { folder: project.folder, stdout, stderr };
}
